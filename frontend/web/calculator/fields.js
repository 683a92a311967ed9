/**
 * The numeric fields of the calculator: the catalogue's, under the name they have here, and those of the diode, which no
 * meter shows. A diode's usual values are those of home-made cells (common practice, no source).
 */
const OF_CATALOGUE = {
  voltage: 'voltage', current: 'current', dark: 'current', area: 'area', reference: 'referenceIrradiance', load: 'load',
  readAt: 'distance', distance: 'distance', angle: 'angle', temperature: 'cellTemperature',
};

const field = (key, quantity, units, possible, usual) => ({
  key, quantity, units,
  possibleLowSi: possible[0], possibleHighSi: possible[1], usualLowSi: usual[0], usualHighSi: usual[1],
});

const OF_DIODE = [
  field('photocurrent', 'current', ['uA', 'mA', 'A'], [0, 100], [1e-6, 0.02]),
  field('saturation', 'current', ['nA', 'uA', 'A'], [1e-100, 100], [1e-12, 1e-5]),
  field('ideality', 'fraction', ['one'], [0.1, 100], [1, 3]),
  field('series', 'resistance', ['ohm', 'kohm'], [0, 1e9], [1, 1000]),
  field('shunt', 'resistance', ['ohm', 'kohm', 'Mohm'], [1e-6, 1e15], [100, 1e6]),
];

/** The field behind a name; the light is read in lux or in W/m², by the instrument. */
export function fieldOf(name, { fields }, instrument) {
  const ofDiode = OF_DIODE.find(({ key }) => key === name);
  if (ofDiode) return ofDiode;
  const key = name === 'light' ? lightField(instrument) : OF_CATALOGUE[name];
  return fields.find(each => each.key === key);
}

/** The same for a slider, which runs where home-made cells are: a cell delivers, and never nothing at all. */
export function slideField(name, catalogue, instrument) {
  const field = fieldOf(name, catalogue, instrument);
  const [usualLowSi, usualHighSi] = SLIDES[name] ?? [field.usualLowSi, field.usualHighSi];
  return { ...field, usualLowSi, usualHighSi };
}

const SLIDES = { voltage: [0.05, 0.8], current: [1e-6, 0.02] };

const lightField = instrument => (instrument === 'luxMeter' ? 'illuminance' : 'irradiance');

/** Unit key in which a light reading starts for an instrument. */
export const lightUnit = instrument => (instrument === 'luxMeter' ? 'lx' : 'Wm2');

/** Lamps small enough for the inverse-square law. */
export const SMALL_LAMPS = ['coolLed', 'warmLed', 'halogen'];
