// Says of each picture on the page what in it cannot be read, by the pixels of its drawing with and without its letters.
const SMALLEST = 12, CONTRAST = 4.5, INK = 40;

function linear(channel) {
  const value = channel / 255;
  return value <= 0.04045 ? value / 12.92 : Math.pow((value + 0.055) / 1.055, 2.4);
}

function luminance(data, at) { // WCAG 2.2, relative luminance
  return 0.2126 * linear(data[at]) + 0.7152 * linear(data[at + 1]) + 0.0722 * linear(data[at + 2]);
}

async function drawn(svg, width, height, scale) {
  const copy = svg.cloneNode(true);
  copy.setAttribute('width', width * scale);
  copy.setAttribute('height', height * scale);
  const image = new Image();
  image.src = 'data:image/svg+xml;charset=utf-8,' + encodeURIComponent(new XMLSerializer().serializeToString(copy));
  await image.decode();
  const canvas = document.createElement('canvas');
  canvas.width = Math.ceil(width * scale);
  canvas.height = Math.ceil(height * scale);
  const pen = canvas.getContext('2d');
  pen.fillStyle = '#fff';
  pen.fillRect(0, 0, canvas.width, canvas.height);
  pen.drawImage(image, 0, 0);
  return pen;
}

async function look(holder, said) {
  const svg = holder.querySelector('svg');
  const box = svg.viewBox.baseVal;
  const width = Math.min(860, box.width);
  svg.setAttribute('width', width);
  svg.setAttribute('height', width * box.height / box.width);
  const sheet = svg.getBoundingClientRect();
  const texts = [...svg.querySelectorAll('text')].filter(text => text.textContent.trim());
  const scale = 2;
  const full = await drawn(svg, sheet.width, sheet.height, scale);
  const bare = svg.cloneNode(true);
  bare.querySelectorAll('text').forEach(text => text.remove());
  const ground = await drawn(bare, sheet.width, sheet.height, scale);
  const earlier = [];
  for (const text of texts) {
    const say = what => said.push(holder.id + ': ' + text.textContent.trim() + ': ' + what);
    const size = parseFloat(getComputedStyle(text).fontSize) * width / box.width;
    if (size < SMALLEST - 0.05) say(size.toFixed(1) + ' px');
    const whole = text.getBoundingClientRect();
    const slim = 0.2 * size; // letters reach neither the top nor the foot of their line
    const upright = whole.height > 2 * size;
    const at = {
      left: whole.left + (upright ? slim : 0), right: whole.right - (upright ? slim : 0),
      top: whole.top + (upright ? 0 : slim), bottom: whole.bottom - (upright ? 0 : slim)};
    if (at.left < sheet.left || at.right > sheet.right || at.top < sheet.top || at.bottom > sheet.bottom) {
      say('outside');
      continue;
    }
    const over = earlier.find(other =>
      other.at.left < at.right && at.left < other.at.right && other.at.top < at.bottom && at.top < other.at.bottom);
    if (over) say('over ' + over.text.textContent.trim());
    earlier.push({text, at});
    const part = [at.left - sheet.left, at.top - sheet.top, at.right - at.left, at.bottom - at.top].map(n => Math.round(n * scale));
    const below = ground.getImageData(...part).data;
    const letters = full.getImageData(...part).data;
    const paper = luminance(below, 0);
    let struck = 0, farthest = 1;
    for (let i = 0; i < below.length; i += 4) {
      if (Math.abs(below[i] - below[0]) + Math.abs(below[i + 1] - below[1]) + Math.abs(below[i + 2] - below[2]) > INK) struck++;
      const ink = luminance(letters, i);
      farthest = Math.max(farthest, (Math.max(ink, paper) + 0.05) / (Math.min(ink, paper) + 0.05));
    }
    if (struck > below.length / 4 / 50) say('something runs through it');
    if (farthest < CONTRAST) say('contrast ' + farthest.toFixed(1));
  }
  said.push('seen ' + holder.id);
}

(async () => {
  const said = [];
  for (const holder of [...document.querySelectorAll('div[id]')]) {
    try { await look(holder, said); } catch (fault) { said.push(holder.id + ': ' + fault); }
  }
  const pre = document.createElement('pre');
  pre.id = 'said';
  pre.textContent = said.join('\n');
  document.body.append(pre);
})();
