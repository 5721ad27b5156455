// data-shots: pictures that are picked in a step's field, dropped on the step or pasted while it is open are put there at once.
// Large photographs are shrunk before they are sent.
const LARGE = 1.5e6;
const LONGEST = 1600;
const images = list => [...list].filter(file => file.type.startsWith('image/'));

async function small(file) {
  if (file.size < LARGE || file.type !== 'image/jpeg') return file;
  try {
    const photo = await createImageBitmap(file);
    const scale = Math.min(1, LONGEST / Math.max(photo.width, photo.height));
    const canvas = new OffscreenCanvas(Math.round(photo.width * scale), Math.round(photo.height * scale));
    canvas.getContext('2d').drawImage(photo, 0, 0, canvas.width, canvas.height);
    return new File([await canvas.convertToBlob({type: 'image/jpeg', quality: 0.9})], file.name, {type: 'image/jpeg'});
  } catch { return file; }
}

async function put(step, files) {
  const field = step.querySelector('input[data-shots]');
  const all = new DataTransfer();
  for (const file of files) all.items.add(await small(file));
  field.files = all.files;
  field.closest('fieldset').querySelector(':scope > .actions > [name=read]').click();
}

const stepOf = event => event.target.closest?.('details.step');
const carriesFiles = event => event.dataTransfer?.types.includes('Files');
const mark = step => document.querySelectorAll('details.step').forEach(one => one.classList.toggle('dropping', one === step));

document.addEventListener('change', event => {
  if (event.target.matches('input[data-shots]') && event.target.files.length) put(stepOf(event), [...event.target.files]);
});
document.addEventListener('dragover', event => {
  if (!carriesFiles(event) || !document.querySelector('form[data-parts]')) return;
  event.preventDefault();
  mark(stepOf(event));
});
document.addEventListener('dragleave', () => mark(null));
document.addEventListener('drop', event => {
  if (!carriesFiles(event)) return;
  event.preventDefault();
  mark(null);
  const files = images(event.dataTransfer.files);
  if (stepOf(event) && files.length) put(stepOf(event), files);
});
document.addEventListener('paste', event => {
  const files = images(event.clipboardData?.files ?? []);
  const open = document.querySelectorAll('details.step[open]');
  const step = stepOf(event) ?? (open.length === 1 ? open[0] : null);
  if (!step || !files.length || event.clipboardData.types.includes('text/plain')) return;
  event.preventDefault();
  put(step, files);
});
