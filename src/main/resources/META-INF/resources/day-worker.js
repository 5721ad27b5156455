// Lets the page of a running class be opened without a network once it has been opened with one: it, its styles and scripts are kept
// as they last came. With a network everything comes from the program; no other page is touched.
const KEPT = 'benchful-day-1';
const DAY = /^\/classes\/\d+\/day$/;
const PART = /^\/(css|js)\//;

async function fresh(request) {
  const answer = await fetch(request);
  if (answer.ok && !answer.redirected) await (await caches.open(KEPT)).put(request.url, answer.clone());
  return answer;
}

const kept = async (request, failure) => (await (await caches.open(KEPT)).match(request.url)) ?? Promise.reject(failure);

addEventListener('install', () => skipWaiting());
addEventListener('activate', event => event.waitUntil(clients.claim()));
addEventListener('message', event => {
  if (event.data?.keep) event.waitUntil(Promise.all(event.data.keep.map(url => fresh(new Request(url)).catch(() => {})))
    .then(() => event.source?.postMessage('kept')));
});
addEventListener('fetch', event => {
  const {request} = event;
  const {origin, pathname} = new URL(request.url);
  if (request.method !== 'GET' || origin !== location.origin) return;
  if (DAY.test(pathname) && request.mode !== 'navigate') event.respondWith(fresh(request));
  else if (DAY.test(pathname) || PART.test(pathname)) event.respondWith(fresh(request).catch(failure => kept(request, failure)));
});
