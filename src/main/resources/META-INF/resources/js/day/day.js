// The page of a running class: each tap is kept in this browser first and shown at once, then sent until the program shows it in its
// log. Without a network everything goes on; other devices' taps come in with the log.
import {due, show} from './board.js';
import {Clock} from './clock.js';
import {Log} from './log.js';
import {course, running} from './running.js';

const EVERY = 5000;
const form = document.querySelector('form[data-day]');
const plan = course(JSON.parse(form.dataset.course));
const log = await Log.of(form.dataset.day);
const clock = new Clock();
const told = new Set();
let underway = false;
let again = false;
let failures = 0;

const read = tap => ({...tap, at: Date.parse(tap.at)});
const local = at => new Date(at - new Date(at).getTimezoneOffset() * 60000).toISOString().slice(0, -1);
const written = ({id, at, kind, step, number, text}) => ({id, at: local(at), kind, step, number, text});
const logOf = shown => JSON.parse(shown.dataset.log).map(read);

function say() {
  const place = form.querySelector('[data-state]');
  const number = log.unsent.length;
  place.hidden = !number && !failures;
  place.classList.toggle('failed', failures > 0);
  place.textContent = failures ? `No network. ${number} to send; nothing is lost, and it goes on by itself.` : number ? `Sending ${number}…` : '';
}

function sayClock() {
  const place = form.querySelector('[data-clock-off]');
  place.textContent = clock.words;
  place.hidden = !clock.words;
}

function draw() {
  const now = clock.now;
  const state = running(plan, log.all.map(tap => tap.sent ? tap : {...tap, at: tap.at + clock.off}), now);
  show(form, state, now);
  const fresh = due(state, now).filter(words => !told.has(words));
  fresh.forEach(words => told.add(words));
  if (fresh.length) {
    navigator.vibrate?.(200);
    const alarm = document.querySelector('[data-alarm]');
    alarm.textContent = fresh.join('. ');
    alarm.hidden = false;
  }
}

async function fetched(request) {
  const asked = Date.now();
  const answer = await request;
  const answered = Date.now();
  if (!answer.ok) throw new Error(answer.status);
  const page = new DOMParser().parseFromString(await answer.text(), 'text/html').querySelector('form[data-day]');
  if (!page) throw new Error('another page');
  clock.heard(Date.parse(page.dataset.moment), asked, answered);
  const key = form.querySelector('input[type=hidden]');
  key.value = page.querySelector(`input[name="${key.name}"]`).value;
  await log.arrived(logOf(page));
}

const patience = () => AbortSignal.timeout(15000);

async function exchange() {
  if (failures || !clock.known) await fetched(fetch(form.action, {signal: patience()}));
  const unsent = log.unsent;
  if (!unsent.length) return failures ? null : fetched(fetch(form.action, {signal: patience()}));
  const key = form.querySelector('input[type=hidden]');
  const body = new URLSearchParams([[key.name, key.value], ['clock', clock.off], ['taps', JSON.stringify(unsent.slice(0, 500).map(written))]]);
  return fetched(fetch(form.action, {method: 'POST', body, signal: patience()}));
}

async function send() {
  if (underway) { again = true; return; }
  underway = true;
  do {
    again = false;
    await exchange().then(() => { failures = 0; }, () => { failures++; });
    say();
    sayClock();
    draw();
  } while (again && !failures);
  underway = false;
}

async function tap(words, text) {
  const [kind, step, number] = words.split(' ');
  const at = Math.max(Date.now(), ...log.all.filter(t => !t.sent).map(t => t.at + 1));
  await log.add({id: crypto.randomUUID?.() ?? `${at}-${Math.random().toString(36).slice(2)}`, at, kind, step: step === '-' ? '' : step, number: Number(number ?? 0), text});
  say();
  draw();
  send();
}

document.querySelectorAll('form.board').forEach(each => each.addEventListener('submit', event => {
  event.preventDefault();
  const note = each.querySelector('input[name=text]');
  if (event.submitter && (!note || note.value.trim())) tap(event.submitter.value, note?.value.trim() ?? '');
  if (note) note.value = '';
}));

// The screen stays awake while the page is seen, where the browser lets it.
const wake = () => document.visibilityState === 'visible' && navigator.wakeLock?.request('screen').catch(() => {});
addEventListener('visibilitychange', wake);
addEventListener('online', send);

await log.arrived(logOf(form));
draw();
say();
sayClock();
wake();
send();
setInterval(send, EVERY);
setInterval(draw, 1000);
document.documentElement.dataset.live = 'true';

if ('serviceWorker' in navigator) {
  await navigator.serviceWorker.register('/day-worker.js', {scope: '/classes/'});
  const {active} = await navigator.serviceWorker.ready;
  const used = performance.getEntriesByType('resource').map(entry => entry.name).filter(name => new URL(name).pathname.match(/^\/(css|js)\//));
  active.postMessage({keep: [...new Set([location.href, ...used])]});
}
