// data-ticks: each tick is sent as it is made, tried again until the program has answered, and sent along when the page is
// left. Only what was changed is sent, so several people may tick at once.
import {body, fields, id, say, show, ticks} from './tickform.js';
import {Waiting} from './waiting.js';

const form = document.querySelector('form[data-ticks]');
const waiting = new Waiting(form.action);
const OUTLIVES = 60000; // letters that may go on being sent when the page is left; of more, browsers send nothing at all
let underway = new Map();
let failures = 0;
let timer;

const patience = () => AbortSignal.timeout(20000);
const page = async answer => new DOMParser().parseFromString(await (await answer).text(), 'text/html');
const formOf = shown => shown.querySelector('form[data-ticks]');

// A page that was open before the program was started anew first fetches what its form is known by.
async function attempt() {
  if (failures) fields(form, formOf(await page(fetch(form.action, {signal: patience()}))));
  const sent = body(form, underway);
  const fresh = await page(fetch(form.action, {method: 'POST', body: sent, keepalive: `${sent}`.length < OUTLIVES, signal: patience()}));
  fields(form, formOf(fresh));
  waiting.kept(underway);
  failures = 0;
  show(form, fresh, waiting);
}

async function send() {
  clearTimeout(timer);
  if (!underway.size && waiting.size) {
    underway = waiting.all;
    say(form, waiting, failures, send);
    await attempt().catch(() => { failures++; });
    underway = new Map();
    timer = waiting.size ? setTimeout(send, failures && Math.min(30000, 1000 * 2 ** failures)) : 0;
  }
  say(form, waiting, failures, send);
}

const tick = (box, ticked) => {
  box.checked = ticked;
  waiting.set(id(box), ticked);
};

form.classList.add('live');
form.addEventListener('change', event => { tick(event.target, event.target.checked); send(); });
form.addEventListener('submit', event => {
  event.preventDefault();
  const {name} = event.submitter ?? {};
  const boxes = name === 'whole' || name === 'none' ? ticks(event.submitter.closest('section') ?? form) : [];
  boxes.filter(box => box.checked !== (name === 'whole')).forEach(box => tick(box, name === 'whole'));
  send();
});
addEventListener('online', send);
addEventListener('pagehide', () => {
  const rest = new Map([...waiting.all].filter(([key, ticked]) => underway.get(key) !== ticked));
  if (rest.size) navigator.sendBeacon(form.action, body(form, rest));
});
waiting.putInto(new Map(ticks(form).map(box => [id(box), box])));
send();
