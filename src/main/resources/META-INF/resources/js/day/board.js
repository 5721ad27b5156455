// Shows the class as it goes on, in the page that came or in the same page gone on with.
const part = (name, form) => form.querySelector(`[data-${name}]`);
const two = number => String(number).padStart(2, '0');
const american = document.documentElement.lang === 'en-US';
const half = hour => `${hour % 12 || 12}`;
const clock = at => {
  const time = new Date(at);
  const minutes = two(time.getMinutes());
  return american ? `${half(time.getHours())}:${minutes}\u00a0${time.getHours() < 12 ? 'AM' : 'PM'}` : `${two(time.getHours())}:${minutes}`;
};
const minutes = ms => Math.round(ms / 60000);

function left(step, now) {
  return until(step.stage === 'now' && step.item.handsOn ? step.begins + step.item.length : step.ends, now);
}

function until(end, now) {
  const time = minutes(end - now);
  return time < 0 ? `${-time} min over` : `${time} min left`;
}

function text(node, name, words) {
  const place = part(name, node);
  if (place && place.textContent !== `${words}`) place.textContent = words;
}

function taps(node, key, title, next) {
  for (const button of node.querySelectorAll('button[data-tap]')) {
    const kind = button.dataset.tap;
    button.value = kind === 'do' ? key : kind === 'count' ? `count ${key} ${next}` : kind === 'more' ? `more ${key} 1` : `${kind} ${key}`;
    const label = {start: 'Start', finish: 'Finish', skip: 'Leave out', count: 'One more has finished', more: 'One more minute', do: 'Do it'}[kind];
    button.setAttribute('aria-label', `${label}: ${title}`);
  }
}

// As many as there are things to show, each in the place it had, so that the focus stays where it is.
function list(form, name, template, things, fill) {
  const place = part(name, form);
  while (place.children.length > things.length) place.lastElementChild.remove();
  while (place.children.length < things.length) place.append(document.getElementById(template).content.firstElementChild.cloneNode(true));
  things.forEach((thing, index) => fill(place.children[index], thing));
}

function step(state, now) {
  return (node, s) => {
    text(node, 'title', s.item.title);
    text(node, 'clock', `${clock(s.begins)} to ${clock(s.ends)}`);
    text(node, 'left', left(s, now));
    text(node, 'stage', s.stage);
    text(node, 'finished', s.finished);
    text(node, 'students', state.present);
    const own = part('own', node);
    if (own) own.hidden = !s.item.own;
    node.classList.toggle('over', left(s, now).endsWith('over'));
    taps(node, s.item.key, s.item.title, Math.min(s.finished + 1, state.present));
  };
}

function rest(node, b, now) {
  const goesOn = b.stage === 'now';
  const hours = `${clock(b.begins)} to ${clock(goesOn ? b.due : b.ends)}`;
  text(node, 'left', goesOn ? until(b.due, now) : '');
  text(node, 'stage', b.stage);
  text(node, 'clock', hours);
  const buttons = {end: ['The break is over', goesOn], begin: ['The break begins', !b.said && !(goesOn && b.begun)], leave: ['No break', b.stage === 'to come' || goesOn && !b.begun]};
  for (const [name, [label, shown]] of Object.entries(buttons)) {
    part(name, node).hidden = !shown;
    part(name, node).setAttribute('aria-label', `${label}, ${hours}`);
  }
}

// What goes on; else what comes next, and what was due just now though nobody said that it began.
function breaks(form, state, now) {
  const part = form.querySelector('[data-break-part]');
  if (!part) return;
  const goesOn = state.breaks.some(b => b.stage === 'now');
  const next = state.breaks.find(b => b.stage === 'to come');
  const shown = b => b.stage === 'now' || !goesOn && (b === next || b.stage === 'over' && !b.begun && !b.said && now < b.due + 1800000);
  [...part.querySelectorAll('[data-rest]')].forEach((row, index) => {
    row.hidden = !shown(state.breaks[index]);
    rest(row, state.breaks[index], now);
  });
  part.hidden = !state.breaks.some(shown);
}

const words = r => r.what === 'leave out' ? `Leave out or take home: ${r.title}` : r.what === 'shorten' ? `Shorten ${r.title} by ${r.minutes} min` : 'No break';

function remedy(node, r) {
  text(node, 'words', words(r));
  text(node, 'gain', `gains ${Math.floor(r.gain / 60000)} min`);
  taps(node, r.what === 'shorten' ? `more ${r.step} -${r.minutes}` : `skip ${r.step}`, words(r), 0);
}

const behind = state => {
  const late = minutes(state.behind);
  return !state.begun ? 'not begun' : late === 0 ? 'on time' : late > 0 ? `${late} min behind` : `${-late} min ahead`;
};

export function show(form, state, now) {
  const handsOn = stage => state.steps.filter(s => s.stage === stage && s.item.handsOn);
  const drying = state.steps.filter(s => s.stage === 'now' && !s.item.handsOn);
  const title = key => state.steps.find(s => s.item.key === key)?.item.title ?? (state.breaks.some(b => b.key === key) ? 'the break' : '');
  const last = state.taps.at(-1);
  text(form, 'behind', behind(state));
  text(form, 'end', clock(state.end));
  text(form, 'booked', clock(state.bookedEnd));
  list(form, 'now', 'day-card', handsOn('now'), step(state, now));
  part('idle', form).hidden = handsOn('now').length > 0;
  breaks(form, state, now);
  list(form, 'next', 'day-next', handsOn('to come').slice(0, 1), step(state, now));
  part('done', form).hidden = handsOn('to come').length > 0;
  list(form, 'drying', 'day-drying', drying, step(state, now));
  part('drying-part', form).hidden = !drying.length;
  list(form, 'sooner', 'day-sooner', state.remedies.slice(0, 6), remedy);
  part('sooner-part', form).hidden = !state.remedies.length;
  text(form, 'help', state.help);
  part('help-more', form).value = `help - ${state.help + 1}`;
  part('help-less', form).value = `help - ${Math.max(0, state.help - 1)}`;
  part('undo-part', form).hidden = !last;
  part('undo', form).value = `undo ${last?.id ?? '-'}`;
  text(form, 'last', last ? `${last.kind} ${title(last.step)}` : '');
  state.steps.forEach((s, index) => {
    const row = part('all', form).children[index];
    text(row, 'stage', s.stage);
    text(row, 'clock', `${clock(s.begins)} to ${clock(s.ends)}`);
  });
  text(form, 'present', state.present);
  for (const seat of form.querySelectorAll('[data-seat]')) {
    const presence = part('presence', seat);
    presence.textContent = state.seats.get(Number(seat.dataset.seat)) ?? '';
    presence.hidden = !presence.textContent;
  }
  const notes = document.querySelector('[data-notes-list]');
  notes.replaceChildren(...state.notes.map(n => Object.assign(document.createElement('li'),
    {textContent: `${clock(n.at)} ${n.kind === 'incident' ? 'Incident' : title(n.step)}: ${n.text}`})));
  const key = handsOn('now')[0]?.item.key ?? '-';
  document.querySelectorAll('form[data-notes] button[data-tap]').forEach(button => { button.value = `${button.dataset.tap} ${key}`; });
}

// What has just run out or got ready, to be told once.
const breaksUp = (state, now) => state.breaks.filter(b => b.stage === 'now' && b.begun && b.due <= now).map(b => `Time is up: the break of ${clock(b.begins)}`);
export const due = (state, now) => [...breaksUp(state, now), ...state.steps.filter(s => s.stage === 'now' && s.item.handsOn && s.begins + s.item.length <= now
  || s.stage === 'over' && !s.item.handsOn && s.ends <= now && now - s.ends < 600000)
  .map(s => s.item.handsOn ? `Time is up: ${s.item.title}` : `Ready: ${s.item.title}`)];
