/**
 * What is being tried, as the address carries it, so that reload, back and a shared link keep it:
 * #light?lamp=halogen&light=900+lx. A typed number stands there as typed, its unit's key behind it.
 */

export const VIEWS = ['cell', 'light', 'curve', 'inside'];
export const TYPED = ['voltage', 'current', 'dark', 'area', 'reference', 'light', 'readAt', 'distance', 'angle',
  'photocurrent', 'saturation', 'ideality', 'series', 'shunt', 'temperature'];
const CHOSEN = ['label', 'lamp', 'instrument', 'dye', 'from', 'pair', 'voltageUnit', 'currentUnit', 'lightPercent', 'areaPercent'];
const [ROWS, BETWEEN, ROW_END] = ['rows', '~', ';'];

/** {view, tried, given}; what the address leaves out is taken from `start`, and `given` is false when it gave nothing. */
export function fromAddress(hash, start) {
  const [view, query = ''] = hash.replace(/^#/, '').split('?');
  const parts = new URLSearchParams(query);
  const tried = { ...start };
  for (const key of TYPED) if (parts.has(key)) tried[key] = typedFrom(parts.get(key));
  for (const key of CHOSEN) if (parts.has(key)) tried[key] = parts.get(key);
  if (parts.has(ROWS)) tried.rows = rowsFrom(parts.get(ROWS));
  return { view: VIEWS.includes(view) ? view : VIEWS[0], tried, given: query !== '' };
}

export function toAddress(view, tried) {
  const parts = new URLSearchParams();
  for (const key of CHOSEN) if (tried[key]) parts.set(key, tried[key]);
  for (const key of TYPED) parts.set(key, `${tried[key]?.text ?? ''} ${tried[key]?.unit ?? ''}`);
  parts.set(ROWS, tried.rows.map(row => row.join(BETWEEN)).join(ROW_END));
  return `#${view}?${parts}`;
}

function typedFrom(text) {
  const [, number, unit] = /^(.*) (\S*)$/s.exec(text) ?? [null, text, ''];
  return { text: number, unit };
}

const rowsFrom = text => text.split(ROW_END).map(row => {
  const [first = '', second = ''] = row.split(BETWEEN);
  return [first, second];
});
