// data-preview: while it is open, what the form would print is shown beside it, anew a moment after the hand rests. One question at a
// time: a newer one gives the older up, and the slower the answers are, the longer it waits before it asks again. A page that is looked
// at large stays until it is put away, by Escape too.
const form = document.querySelector('form[data-parts]');
const panel = document.querySelector('[data-preview]');
const RESTS = 1200;
let asked;
let waiting;
let took = 0;
const large = () => panel.querySelector('.page:target');

async function show() {
  if (!panel.open) return;
  asked?.abort();
  const mine = asked = new AbortController();
  const sent = new FormData(form);
  [...form.querySelectorAll('input[type=file]')].forEach(field => sent.delete(field.name));
  sent.append('sending', `${Date.now()} preview`);
  const began = performance.now();
  panel.setAttribute('aria-busy', 'true');
  try {
    const answer = await fetch(panel.dataset.preview, {method: 'POST', body: sent, signal: mine.signal});
    if (!answer.ok) throw new Error(answer.status);
    if (large()) return later();
    const fresh = new DOMParser().parseFromString(await answer.text(), 'text/html').querySelector('[data-seen]');
    panel.querySelector('[data-seen]').replaceWith(fresh);
    took = performance.now() - began;
  } catch { if (mine === asked) later(10 * RESTS); } finally { if (mine === asked) panel.removeAttribute('aria-busy'); }
}

function later(rest = Math.max(RESTS, 2 * took)) {
  clearTimeout(waiting);
  waiting = setTimeout(show, rest);
}

document.addEventListener('input', event => { if (event.target.form === form) later(); });
document.addEventListener('keydown', event => { if (event.key === 'Escape' && large()) large().querySelector('.smaller').click(); });
form.addEventListener('rearranged', () => later());
panel.addEventListener('toggle', () => { if (panel.open) show(); });
panel.querySelector('button').addEventListener('click', event => { event.preventDefault(); show(); });
if (matchMedia('(min-width: 72rem)').matches) panel.open = true;
