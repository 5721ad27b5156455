// data-parts: a form whose lists are changed in the page. A list button sends the form as it does without scripts, and of the page
// that comes back only the parts are taken: those marked data-part, and the boxes of lines marked data-box. What is typed into a
// box is read as soon as the hand rests.
//
// Whatever is typed is kept as a draft a moment later, and once more when the page is left. Where the program is away it is tried again
// until it is back; a key that has run out is changed for the one that comes with the refusal.
import {forget, path} from './drafts.js';

const form = document.querySelector('form[data-parts]');
const RESTS = 1500;
const AGAIN = 3000;
const LIST_BUTTONS = ['add', 'remove', 'up', 'copy', 'putback', 'read'];
let latest = 0;
let waiting;

const opened = () => new Set([...form.querySelectorAll('details[open][id]')].map(details => details.id));

// What the form is known by is new on each page.
function known(page) {
  const fresh = page.querySelector('form[data-parts] > [name="form-key"]');
  if (fresh) form.querySelector(':scope > [name="form-key"]').value = fresh.value;
}

const withoutFiles = sent => {
  [...form.querySelectorAll('input[type=file]')].forEach(field => sent.delete(field.name));
  return sent;
};

const parsed = async answer => new DOMParser().parseFromString(await answer.text(), 'text/html');

async function post(address, sent) {
  let answer = await fetch(address, {method: 'POST', body: sent});
  if (answer.status === 403) {
    const fresh = (await parsed(answer)).querySelector('[name="form-key"]');
    if (!fresh) throw new Error('no key');
    form.querySelector(':scope > [name="form-key"]').value = fresh.value;
    sent.set('form-key', fresh.value);
    answer = await fetch(address, {method: 'POST', body: sent});
  }
  if (!answer.ok) throw new Error(answer.status);
  return parsed(answer);
}

async function fetched(name, value, sent = new FormData(form)) {
  const turn = ++latest;
  sent.append(name, value);
  sent.append('sending', `${Date.now()} ${turn}`); // No two are alike, so none is taken for one that was pressed twice.
  const page = await post(form.action, sent);
  return turn === latest ? page : null;
}

// A part in which somebody types is left alone until the hand leaves it.
const busy = part => part.contains(document.activeElement) && document.activeElement.matches('input:not([type=checkbox]), textarea, select');

function take(page, {except}) {
  const open = opened();
  for (const fresh of page.querySelectorAll('form[data-parts] :is([data-part], [data-box])')) {
    const mark = fresh.dataset.part ? `[data-part="${fresh.dataset.part}"]` : `[data-box="${fresh.dataset.box}"]`;
    const here = form.querySelector(mark);
    const picked = except !== 'nothing' && [...here?.querySelectorAll('input[type=file]') ?? []].some(field => field.files.length);
    if (here && !busy(here) && !picked && !(except && here.dataset.box === except)) here.replaceWith(fresh);
  }
  open.forEach(id => document.getElementById(id)?.setAttribute('open', ''));
  form.dispatchEvent(new Event('rearranged'));
}

async function press(button) {
  const page = await fetched(button.name, button.value);
  if (!page) return;
  const aim = new URL(button.formAction).hash.slice(1);
  const hand = document.activeElement === button ? '' : document.activeElement?.id;
  document.activeElement?.blur();
  take(page, {except: 'nothing'});
  if (hand) document.getElementById(hand)?.focus();
  if (button.name === 'remove') form.querySelector('[name=putback][autofocus]')?.focus();
  const row = document.getElementById(aim);
  if (button.name === 'add' && row) {
    row.closest('details')?.setAttribute('open', '');
    if (row.matches('details')) row.open = true;
    row.querySelector('input:not([type=hidden]), select, textarea')?.focus();
  }
  if (button.name === 'putback') row?.querySelector('summary, input:not([type=hidden]), select, button')?.focus();
  typed = true;
  later();
}

async function read(box) {
  const list = box.name.replace('lines', '');
  const typed = box.value;
  const page = await fetched('read', list, withoutFiles(new FormData(form)));
  if (page && box.value === typed) take(page, {except: list});
}

let typed = false;
let keeping;
let underway = false;

async function keep() {
  if (underway) return later();
  underway = true;
  typed = false;
  try {
    const sent = withoutFiles(new FormData(form));
    sent.append('sending', `${Date.now()} keep`);
    const page = await post('/projects/drafts', sent);
    form.querySelector('[data-part=draft]').replaceWith(page.querySelector('[data-part=draft]'));
    known(page);
    if (!typed) forget({path: path(form)});
  } catch {
    typed = true;
    later(AGAIN);
  } finally { underway = false; }
}

function later(rest = RESTS) {
  clearTimeout(keeping);
  keeping = setTimeout(keep, rest);
}

form.addEventListener('input', event => {
  if (event.isTrusted || event.target !== form) { typed = true; later(); }
});
addEventListener('pagehide', () => {
  if (typed && !form.dataset.sent) navigator.sendBeacon('/projects/drafts', new FormData(form));
});
form.addEventListener('submit', () => { clearTimeout(keeping); form.dataset.sent = 'yes'; });

form.addEventListener('click', event => {
  const button = event.target.closest('button');
  if (!button || !LIST_BUTTONS.includes(button.name)) return;
  event.preventDefault();
  press(button).catch(() => form.requestSubmit(button));
});

form.addEventListener('input', event => {
  if (!event.target.matches?.('textarea[data-lines]')) return;
  clearTimeout(waiting);
  waiting = setTimeout(() => read(event.target).catch(() => { /* Read when it is saved. */ }), 500);
});
