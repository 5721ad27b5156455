// data-typed, on the key of a form: what is typed is kept in this tab until the program has answered that it is saved, and is
// offered back when the page is opened again after the connection or the program was lost. What was typed into a form with
// data-private is forgotten as soon as another page is shown.
import {drafts, forget, keep, path, putBack, written} from './drafts.js';

const forms = () => [...document.querySelectorAll('[data-typed]')].map(key => key.form);

function panel(words, buttons) {
  const panel = document.createElement('div');
  panel.className = 'panel warn';
  panel.setAttribute('role', 'status');
  panel.append(Object.assign(document.createElement('p'), {textContent: words}));
  const actions = panel.appendChild(Object.assign(document.createElement('p'), {className: 'actions'}));
  for (const [name, press] of buttons) {
    const button = Object.assign(document.createElement('button'), {type: 'button', textContent: name});
    button.addEventListener('click', () => { press(); panel.remove(); });
    actions.append(button, ' ');
  }
  return panel;
}

const offer = (form, draft) => form.before(panel('What you typed here before was not saved: the connection was lost, or the page was left.', [
  ['Put it back', () => { putBack(form, draft); keep(form); }],
  ['Throw it away', () => forget(draft)]]));

const isSaved = async draft => await (await fetch(`/sendings/${draft.key.split('.')[0]}`)).text() === 'saved';

async function look(draft) {
  const form = forms().find(one => path(one) === draft.path);
  const shownAgain = form?.querySelector('[data-typed=again]') && draft.path === location.pathname;
  if (shownAgain) keep(form);
  else if (await isSaved(draft) || (draft.secret && !form)) forget(draft);
  else if (form && written(form) !== draft.typed) offer(form, draft);
}
drafts().forEach(draft => look(draft).catch(() => { /* Asked again on the next page. */ }));

// What is tried stands in the address, and ticks are kept as they are made.
const kept = form => form?.querySelector('[data-typed]') && !form.matches('[data-recompute], [data-ticks]');

let waiting;
document.addEventListener('input', event => {
  const form = event.target.form;
  if (!kept(form)) return;
  clearTimeout(waiting);
  waiting = setTimeout(keep, 300, form);
});
document.addEventListener('submit', event => {
  clearTimeout(waiting);
  if (kept(event.target)) keep(event.target);
}, true);
