// A form of boxes with ticks: what is sent of it, and how it follows what the program answers.
let sendings = 0;

export const ticks = part => [...part.querySelectorAll('input[type=checkbox]')];
export const id = box => JSON.stringify([box.closest('section').querySelector('[name=kit]').value, box.value]);

const known = form => [...form.querySelectorAll(':scope > input[type=hidden]')];

// What a form is known by is new on each page.
export function fields(form, fresh) {
  known(fresh).forEach(field => { form.querySelector(`:scope > [name="${field.name}"]`).value = field.value; });
}

// Each change is a box of its own. No two sendings are alike, so none is taken for one that was pressed twice.
export function body(form, changes) {
  const sent = new URLSearchParams(known(form).map(field => [field.name, field.value]));
  sent.set('sending', `${Date.now()} ${++sendings}`);
  [...changes].forEach(([key, ticked], index) => {
    const [kit, material] = JSON.parse(key);
    sent.append('kit', kit);
    sent.append(`${ticked ? 'ticked' : 'was'}-${index + 1}`, material);
  });
  return sent;
}

// Whether all is kept, in words, and at each tick that is not.
export function say(form, waiting, failures, again) {
  const state = form.querySelector('[data-state]');
  const number = `${waiting.size} ${waiting.size === 1 ? 'tick is' : 'ticks are'}`;
  state.textContent = !waiting.size ? 'Every tick is kept.' : failures ? `${number} not kept yet. It is tried again. ` : `${number} being kept…`;
  state.classList.toggle('failed', failures > 0);
  if (waiting.size && failures) state.append(Object.assign(document.createElement('button'), {type: 'button', textContent: 'Try now', onclick: again}));
  ticks(form).forEach(box => box.closest('.field').classList.toggle('waiting', waiting.has(id(box))));
}

function replace(part, fresh) {
  const had = part.contains(document.activeElement);
  part.replaceWith(fresh);
  if (had) fresh.querySelector('button:not([name=place])')?.focus();
}

// Follows what others ticked meanwhile. Where the plan has changed, the list is another one and the page is opened anew.
export function show(form, fresh, waiting) {
  const there = new Map(ticks(fresh).map(box => [id(box), box.checked]));
  if (ticks(form).some(box => !there.has(id(box))) || there.size !== ticks(form).length) return location.reload();
  ticks(form).filter(box => !waiting.has(id(box))).forEach(box => { box.checked = there.get(id(box)); });
  document.querySelector('[data-summary]').replaceWith(fresh.querySelector('[data-summary]'));
  const sections = [...fresh.querySelectorAll('form[data-ticks] > section')];
  [...form.querySelectorAll(':scope > section')].forEach((section, index) => {
    section.className = sections[index].className;
    section.querySelector('h2').textContent = sections[index].querySelector('h2').textContent;
    replace(section.querySelector('.actions'), sections[index].querySelector('.actions'));
  });
}
