'use strict';
// The section through the lap at a hole, drawn in mm: u outboard, v down from the sheer.

const svgSpace = 'http://www.w3.org/2000/svg';
const lettering = 2.2, below = 12, above = 9;

function element(name, attributes, text) {
  const made = document.createElementNS(svgSpace, name);
  for (const [key, value] of Object.entries(attributes)) made.setAttribute(key, value);
  if (text !== undefined) made.textContent = text;
  return made;
}

function path(kind, points, closed) {
  const data = points.map(([u, v]) => `${u.toFixed(3)} ${v.toFixed(3)}`).join('L');
  return element('path', {class: kind, d: `M${data}${closed ? 'Z' : ''}`});
}

function words(u, v, text, more) {
  return element('text', {x: u.toFixed(3), y: v.toFixed(3), ...more}, text);
}

/** Where a face stands outboard at a depth; it is straight and carried on past its edges. */
function faceAt(section, face, depth) {
  return face[0] + (face[1] - face[0]) * depth / section.lap;
}

/** A point `along` the bit and `aside` of it. */
function onBit(section, along, aside) {
  const [u, v] = section.entry, [bitU, bitV] = section.bit;
  const length = Math.hypot(bitU, bitV);
  return [u + along * bitU - aside * bitV / length, v + along * bitV + aside * bitU / length];
}

/** How far along the bit a face lies. */
function alongTo(section, face) {
  const slope = (face[1] - face[0]) / section.lap;
  const [u, v] = section.entry, [bitU, bitV] = section.bit;
  return (face[0] + slope * v - u) / (bitU - slope * bitV);
}

function laminates(section) {
  const strip = (kind, inner, outer, from, to) => path(`laminate ${kind}`, [
    [faceAt(section, inner, from), from], [faceAt(section, outer, from), from],
    [faceAt(section, outer, to), to], [faceAt(section, inner, to), to]], true);
  return [strip('hull', section.hull_inner, section.hull, 0, section.lap + below),
    strip('lip', section.lip, section.lip_outer, -above, section.lap)];
}

function adhesive(section) {
  const from = page.bond[0], to = Math.min(page.bond[1] ?? section.lap, section.lap);
  const lines = [];
  for (let v = from; v <= to + 1e-9; v += 1.5)
    lines.push(path('adhesive', [[faceAt(section, section.hull, v), v], [faceAt(section, section.lip, v), v]]));
  return lines;
}

/** The holes of the bits, dashed, and the fastener in them. */
function fastener(section) {
  const box = (kind, from, to, across) => path(kind, [onBit(section, from, -across / 2),
    onBit(section, to, -across / 2), onBit(section, to, across / 2), onBit(section, from, across / 2)], true);
  const parts = [path('axis', [onBit(section, -9, 0), onBit(section, section.stack + 9, 0)])];
  const throughLip = alongTo(section, section.lip);
  if (section.drill_depth !== null) {
    parts.push(box('bore', throughLip, section.drill_depth, section.hull_pilot));
    parts.push(box('bore', 0, throughLip, section.lip_hole));
  }
  if (section.length === null) return parts;
  const [headAcross, sunk] = page.head, thick = page.diameter, head = 0.5 * thick;
  const point = section.length - (page.pointed ? 0.8 * thick : 0);
  parts.push(path('shank', [onBit(section, 0, -thick / 2), onBit(section, point, -thick / 2),
    onBit(section, section.length, 0), onBit(section, point, thick / 2), onBit(section, 0, thick / 2)], true));
  parts.push(sunk
    ? path('shank', [onBit(section, 0, -headAcross / 2), onBit(section, 0, headAcross / 2),
      onBit(section, head, thick / 2), onBit(section, head, -thick / 2)], true)
    : box('shank', -head, 0, headAcross));
  return parts;
}

function upright(u, from, to, text, leftOfIt) {
  const at = leftOfIt ? u - 1.2 : u + 1.2 + lettering * 0.72;
  const middle = (from + to) / 2;
  return [path('measure', [[u - 1, from], [u + 1, from], [u, from], [u, to], [u - 1, to], [u + 1, to]]),
    words(0, 0, text, {transform: `translate(${at.toFixed(2)} ${middle.toFixed(2)}) rotate(-90)`,
      'text-anchor': 'middle'})];
}

function gapMarks(section, texts) {
  const mark = (v, text, labelV) => {
    const from = faceAt(section, section.hull, v), to = faceAt(section, section.lip, v);
    return [path('measure', [[from, v - 1], [from, v + 1], [from, v], [to, v], [to, v - 1], [to, v + 1]]),
      words((from + to) / 2, labelV, text, {'text-anchor': 'middle', class: 'on-line'})];
  };
  return [...mark(-1.8, `gap ${texts.gapTop}`, -4), ...mark(section.lap + 1.8, `gap ${texts.gapLow}`, section.lap + 6.6)];
}

/** The section at a hole. `texts`: gapTop, gapLow, edgeTop, edgeLow, gapBit, stack, fastener. */
function drawSection(hole, texts) {
  const section = hole.section;
  const hullLeft = Math.min(...section.hull_inner, faceAt(section, section.hull_inner, section.lap + below));
  const lipRight = Math.max(...section.lip_outer, faceAt(section, section.lip_outer, -above));
  const reach = Math.max(section.stack, section.length ?? 0, section.drill_depth ?? 0) + 9;
  const left = Math.min(hullLeft - 13, onBit(section, reach, 0)[0] - 2), right = lipRight + 20;
  const top = -above - 7, bottom = section.lap + below + 23;
  const hullAt = onBit(section, alongTo(section, section.hull), 0);
  const [bar, barText] = page.check_bar;
  const width = Math.max(right - left, bar + 4), barLeft = left + 2;
  const svg = element('svg', {viewBox: `${left.toFixed(2)} ${top.toFixed(2)} ${width.toFixed(2)} ${(bottom - top).toFixed(2)}`,
    'font-size': lettering, role: 'img', 'aria-label': `Section at ${hole.mark}: gap ${texts.gapTop} at the hull's top, ` +
      `${texts.gapLow} at the lip's low edge, stack ${texts.stack}, ${texts.fastener}`});
  svg.style.setProperty('--paper-width', `${width.toFixed(2)}mm`);
  const labels = [
    words(faceAt(section, section.hull_inner, section.lap + below) + 0.6, section.lap + below + 4, 'hull', {}),
    words(faceAt(section, section.lip_outer, -above) + 1.5, -above + 2.4, 'lip', {}),
    words(left + 1, bottom - 13.5, texts.fastener, {}),
    words(left + 1, bottom - 10.3, `along the bit: stack ${texts.stack}, gap ${texts.gapBit}`, {}),
    path('scale', [[barLeft, bottom - 7], [barLeft, bottom - 5], [barLeft + bar, bottom - 5], [barLeft + bar, bottom - 7]]),
    words(barLeft, bottom - 1.4, barText, {})];
  svg.append(...laminates(section), ...adhesive(section), ...fastener(section),
    ...upright(hullLeft - 4, 0, hullAt[1], `edge top ≥ ${texts.edgeTop}`, true),
    ...upright(lipRight + 8, section.entry[1], section.lap, `edge low ≥ ${texts.edgeLow}`, false),
    ...gapMarks(section, texts), ...labels);
  return svg;
}
