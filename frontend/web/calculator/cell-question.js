/** What the server is asked about a cell: what the displays showed, with the step of their last digit. */
import { columnsOf, amount, inCelsius, lightPart, needed, placePart, readOf, rowsRead } from './questions.js';

const CM2_PER_M2 = 1e4;
const FEWEST_ROWS = 5;

/** Null while a number that is needed is missing or cannot be read. */
export function cellQuestion(tried, catalogue) {
  const light = complete({ ...lightPart(tried, catalogue), ...placePart(tried, catalogue) });
  const under = tried.from === 'sweep' ? sweepPart(tried, catalogue) : spotPart(tried, catalogue);
  const body = {
    ...under, ...shown('dark', 'darkCurrent', 'A', tried, catalogue, true), ...areaPart(tried, catalogue), light,
    ...lightSure(tried, catalogue),
    temperatureC: inCelsius(amount('temperature', tried, catalogue), catalogue),
    referenceIrradianceWm2: needed('reference', tried, catalogue),
  };
  return light === null || under === null ? null : complete(body);
}

const spotPart = (tried, catalogue) => ({
  ...shown('voltage', 'voltage', 'V', tried, catalogue), ...shown('current', 'current', 'A', tried, catalogue),
});

/** {currentA, currentResolutionA}; nothing where nothing was typed and nothing need be. */
function shown(name, key, unit, tried, catalogue, optional = false) {
  const read = readOf(name, tried, catalogue);
  if (read === null && optional) return {};
  return { [`${key}${unit}`]: read?.valueSi, [`${key}Resolution${unit}`]: read?.resolutionSi };
}

function sweepPart(tried, catalogue) {
  const rows = rowsRead(tried, catalogue).filter(row => row !== null);
  if (rows.length < FEWEST_ROWS || rows.includes(undefined)) return null;
  const columns = columnsOf(tried);
  return { points: rows.map(row => Object.assign({}, ...columns.map((column, i) => rowPart(column, row[i])))) };
}

const rowPart = ({ key, resolution }, { valueSi, resolutionSi }) =>
  ({ [key]: valueSi, ...(resolution ? { [resolution]: resolutionSi } : {}) });

/** How well the area is known goes with it by its share, where somebody measured both. */
function areaPart(tried, catalogue) {
  const areaM2 = needed('area', tried, catalogue);
  if (areaM2 === undefined) return { areaCm2: undefined };
  const areaCm2 = areaM2 * CM2_PER_M2;
  return tried.areaPercent ? { areaCm2, areaUncertaintyCm2: areaCm2 * Number(tried.areaPercent) / 100 } : { areaCm2 };
}

function lightSure(tried, catalogue) {
  if (tried.lightPercent) return { lightUncertaintyPercent: Number(tried.lightPercent) };
  return { lightResolution: readOf('light', tried, catalogue)?.resolutionSi };
}

const complete = body => (Object.values(body).includes(undefined) ? null : body);
