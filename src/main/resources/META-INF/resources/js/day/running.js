// The class as it goes on: what the taps amount to, and when the rest is likely to be over. The same fold as core.day.Running, rule
// by rule, for a browser that may have no network; a test holds the two to the same answers. Times are milliseconds.
const MINUTE = 60000;
const BEGUN = new Set(['start', 'finish', 'skip']);
const WORK = new Set(['start', 'finish', 'count']);
const order = (a, b) => a.at - b.at || (a.id < b.id ? -1 : a.id > b.id ? 1 : 0);
const time = text => Date.parse(text);

export const course = data => ({
  students: data.students,
  end: time(data.end),
  steps: data.steps.map(s => ({...s, start: time(s.start), end: time(s.end), length: s.length * 1000, notBefore: s.notBefore ? time(s.notBefore) : -Infinity})),
  pauses: data.pauses.map(p => ({...p, start: time(p.start), end: time(p.end)})),
});

// In order, each once, without what was taken back.
function counting(taps) {
  const back = new Set();
  const kept = [];
  for (const tap of [...new Map(taps.map(t => [t.id, t])).values()].sort(order).reverse()) {
    if (back.has(tap.id)) continue;
    if (tap.kind === 'undo') back.add(tap.step); else kept.unshift(tap);
  }
  return kept;
}

// On a day for which nothing is planned the class begins with its first tap.
function moved(course, first) {
  const day = at => new Date(at).toDateString();
  if (first === undefined || !course.steps.length || course.steps.some(s => day(s.start) === day(first))) return course;
  const by = first - course.steps[0].start;
  const move = part => ({...part, start: part.start + by, end: part.end + by, notBefore: part.notBefore + by});
  return {...course, end: course.end + by, steps: course.steps.map(move), pauses: course.pauses.map(move)};
}

function told(course, taps) {
  const progress = new Map([...course.steps, ...course.pauses].map(s => [s.key, {more: 0, finished: 0}]));
  const all = {progress, seats: new Map(), notes: [], help: 0};
  for (const tap of taps) {
    const step = progress.get(tap.step);
    if (tap.kind === 'help') all.help = Math.max(0, tap.number);
    else if (tap.kind === 'note' || tap.kind === 'incident') all.notes.push(tap);
    else if (['late', 'absent', 'left'].includes(tap.kind)) all.seats.set(tap.number, tap.kind);
    else if (!step) continue;
    else if (tap.kind === 'start') Object.assign(step, {began: tap.at, ended: undefined, skipped: false});
    else if (tap.kind === 'finish') Object.assign(step, {ended: tap.at, skipped: false});
    else if (tap.kind === 'skip') Object.assign(step, {ended: undefined, skipped: true});
    else if (tap.kind === 'more') step.more += tap.number;
    else if (tap.kind === 'count') step.finished = Math.max(0, tap.number);
  }
  return all;
}

const isBreak = pause => pause.key.startsWith('break-');

// One that is said to begin goes on until it is said to be over, or until somebody tells of work once its time is up.
function taken(pause, known, worked, now) {
  const begins = known.began ?? pause.start;
  const due = begins + Math.max(0, pause.end - pause.start + known.more * MINUTE);
  const begun = known.began !== undefined;
  if (known.ended !== undefined) return {key: pause.key, stage: 'over', begins: Math.min(begins, known.ended), ends: known.ended, due, begun, said: true};
  const goesOn = begun && worked.every(at => at < due);
  const stage = known.skipped ? 'left out' : begins > now ? 'to come' : goesOn || due > now ? 'now' : 'over';
  return {key: pause.key, stage, begins, ends: goesOn ? Math.max(due, now) : due, due, begun, said: false};
}

// Those that are not left out, in order; one that is not over yet holds the next one back.
function likely(pauses, breaks) {
  const known = new Map(breaks.map(b => [b.key, {key: b.key, start: b.begins, end: b.ends}]));
  return pauses.map(p => known.get(p.key) ?? p).sort((a, b) => a.start - b.start).reduce((done, p) => {
    const start = Math.max(p.start, done.at(-1)?.end ?? -Infinity);
    return [...done, {...p, start, end: Math.max(start, p.end)}];
  }, []);
}

// Of what is shown to one group and to another there is one tutor.
const shown = item => item.handsOn && !item.own;
const shares = (a, b) => a.group === 0 || b.group === 0 || a.group === b.group || shown(a) && shown(b);
const isAfter = (item, other) => other.item.handsOn && shares(other.item, item) && (item.handsOn || other.item.end <= item.start);
const isOpen = step => step.stage === 'to come' || step.stage === 'now';

export function running(whole, log, now) {
  const taps = counting(log);
  const first = taps.find(t => BEGUN.has(t.kind) && whole.steps.some(s => s.key === t.step))?.at;
  const begun = first !== undefined;
  const plan = moved(whole, first);
  const {progress, seats, notes, help} = told(plan, taps);

  const handsOn = new Set(plan.steps.filter(s => s.handsOn).map(s => s.key));
  const work = taps.filter(t => WORK.has(t.kind) && handsOn.has(t.step)).map(t => t.at);
  const breaks = plan.pauses.filter(isBreak).map(p => taken(p, progress.get(p.key), work, now));
  const pauses = likely(plan.pauses.filter(p => !progress.get(p.key).skipped), breaks);
  const counts = (pause, change) => !(change.wholly && change.key === pause.key);
  const free = (item, before) => Math.max(...before.filter(s => isAfter(item, s)).map(s => s.ends), -Infinity);
  const freeAt = (item, before) => {
    const at = free(item, before);
    return at === -Infinity ? (begun ? item.start : Math.max(item.start, now)) : at;
  };
  const ready = (item, from, before) => Math.max(from, ...before.filter(s => !s.item.handsOn && s.stage !== 'left out'
    && shares(s.item, item) && s.item.end <= item.start).map(s => s.ends));
  const afterPauses = (from, change) => pauses.reduce((at, p) => counts(p, change) && at >= p.start && at < p.end ? p.end : at, from);
  const end = (from, length, change) => pauses.reduce((at, p) => counts(p, change) && p.start < at && p.end > from
    ? at + p.end - Math.max(p.start, from) : at, from + Math.max(0, length));

  function waited(item, known, before) {
    const runs = begun && (known.began !== undefined || !before.some(s => isOpen(s) && isAfter(item, s)));
    const begins = known.began ?? freeAt(item, before);
    const ends = known.ended ?? begins + item.length + known.more * MINUTE;
    const stage = known.ended !== undefined ? 'over' : !runs ? 'to come' : ends > now ? 'now' : 'over';
    return {item, stage, begins, ends, finished: known.finished};
  }

  function worked(item, known, before, change) {
    const from = freeAt(item, before);
    if (known.ended !== undefined) {
      return {item, stage: 'over', begins: Math.min(known.began ?? from, known.ended), ends: known.ended, finished: known.finished};
    }
    const isNext = begun && !before.some(s => isOpen(s) && s.item.handsOn && isAfter(item, s));
    const soonest = Math.max(item.notBefore, ready(item, from, before));
    const begins = known.began ?? afterPauses(isNext ? soonest : Math.max(now, soonest), change);
    const ends = end(begins, item.length + (known.more - (change.key === item.key ? change.minutes : 0)) * MINUTE, change);
    const goesOn = known.began !== undefined || isNext && begins <= now;
    return {item, stage: goesOn ? 'now' : 'to come', begins, ends: goesOn ? Math.max(ends, now) : ends, finished: known.finished};
  }

  function steps(change = {}) {
    const done = [];
    for (const item of plan.steps) {
      const known = progress.get(item.key);
      if (known.skipped || change.wholly && change.key === item.key) {
        const at = freeAt(item, done);
        done.push({item, stage: 'left out', begins: at, ends: at, finished: known.finished});
      } else {
        done.push(item.handsOn ? worked(item, known, done, change) : waited(item, known, done));
      }
    }
    return done;
  }

  const last = all => Math.max(...all.filter(s => s.item.handsOn).map(s => s.ends), -Infinity);
  const all = steps();
  const ends = last(all) === -Infinity ? plan.end : last(all);
  const gain = change => ends - last(steps(change));

  function remedies() {
    if (ends <= plan.end) return [];
    const tried = all.filter(s => s.stage === 'to come' && s.item.handsOn).flatMap(({item}) => {
      const third = Math.floor(Math.floor(item.length / MINUTE) / 3);
      return [{what: 'leave out', step: item.key, title: item.title, minutes: 0, gain: gain({key: item.key, wholly: true, minutes: 0})},
        {what: 'shorten', step: item.key, title: item.title, minutes: third, gain: gain({key: item.key, minutes: third})}];
    });
    pauses.filter(p => isBreak(p) && p.start > now)
      .forEach(p => tried.push({what: 'no break', step: p.key, title: '', minutes: 0, gain: gain({key: p.key, wholly: true, minutes: 0})}));
    const rank = ['leave out', 'shorten', 'no break'];
    return tried.filter(r => r.gain >= MINUTE)
      .sort((a, b) => b.gain - a.gain || (a.step < b.step ? -1 : a.step > b.step ? 1 : 0) || rank.indexOf(a.what) - rank.indexOf(b.what));
  }

  const planned = Math.max(...plan.steps.filter(s => s.handsOn).map(s => s.end), -Infinity);
  return {begun, steps: all, end: ends, behind: ends - (planned === -Infinity ? ends : planned), remedies: remedies(), breaks, help, seats, notes, taps,
    bookedEnd: plan.end, present: plan.students - [...seats.values()].filter(p => p !== 'late').length};
}
