// What is typed into a form, as it is kept in this tab until the form's sending is answered. Nothing of it leaves the tab.
const KEPT = 'typed ';
const TYPED = 'input:not([type=hidden], [type=file], [type=password]), select, textarea';
const isTick = field => field.type === 'checkbox' || field.type === 'radio';

export const path = form => new URL(form.getAttribute('action') || '', location.href).pathname;
const key = form => form.querySelector('[data-typed]');

// Fields bear a name and the how manieth of that name they are; ticks their value too.
function fields(form) {
  const count = {};
  return [...form.elements].filter(field => field.name && field.matches(TYPED)).map(field => {
    const name = isTick(field) ? `${field.name}=${field.value}` : field.name;
    count[name] = (count[name] ?? -1) + 1;
    return {field, id: `${name} ${count[name]}`, value: isTick(field) ? field.checked : field.value};
  });
}

// What stands in a form, as a text that can be compared; empty where it has nothing to type into.
export function written(form) {
  const typed = fields(form).map(({id, value}) => [id, value]);
  return typed.length ? JSON.stringify(typed) : '';
}

export function keep(form) {
  const draft = {path: path(form), key: key(form).value, secret: form.matches('[data-private]'), typed: written(form)};
  try {
    if (draft.typed) sessionStorage.setItem(KEPT + draft.path, JSON.stringify(draft));
  } catch { /* The tab's store is full; the form itself still holds everything. */ }
}

export const drafts = () => Object.keys(sessionStorage).filter(name => name.startsWith(KEPT)).map(name => JSON.parse(sessionStorage.getItem(name)));
export const forget = draft => sessionStorage.removeItem(KEPT + draft.path);

// A row that was added when it was typed has no field here: it is sent along unseen, and then has its place again.
function missing(form, id, value) {
  const field = document.createElement('input');
  const named = id.replace(/ \d+$/, '');
  field.type = typeof value === 'boolean' ? 'checkbox' : 'hidden';
  field.hidden = true;
  [field.name] = typeof value === 'boolean' ? named.split('=') : [named];
  if (typeof value === 'boolean') field.value = named.slice(field.name.length + 1);
  return form.appendChild(field);
}

// With the key it was sent with: if it was saved all the same, it is not saved twice.
export function putBack(form, draft) {
  const here = new Map(fields(form).map(({id, field}) => [id, field]));
  for (const [id, value] of JSON.parse(draft.typed)) {
    const field = here.get(id) ?? missing(form, id, value);
    if (isTick(field)) field.checked = value;
    else field.value = value;
  }
  key(form).value = draft.key;
}
