/** A load sweep as it is being typed: its rows read, judged and made ready to travel. Pure over the draft and the catalogue. */
import { t } from '../core/texts.js';
import { METER_UNITS, NO_ROW, WAYS, isFilled, pointOf, readRow, sweepPoint, toneOf } from './sweep-rows.js';

const FEWEST = 5;

export class Sweep {
  /**
   * @param draft {way, voltageUnit, currentUnit, rows, confirmed}
   * @param catalogue with fields and units
   */
  constructor(draft, catalogue) {
    Object.assign(this, { ...draft, units: catalogue.units, fields: catalogue.fields });
  }

  get columns() {
    return WAYS[this.way];
  }

  get filled() {
    return this.rows.filter(row => isFilled(row, this.way));
  }

  /** [{ohm, voltageV, currentA}] of the rows that can be read. */
  get points() {
    return this.filled.map(row => pointOf(this.read(row))).filter(Boolean);
  }

  get unusual() {
    return this.filled.some(row => this.tone(row) === 'unusual');
  }

  /** What keeps it from being sent, or null. */
  get trouble() {
    if (this.filled.some(row => this.tone(row) === 'impossible')) return t('page.bench.sweepWrong');
    if (this.filled.length < FEWEST) return t('page.bench.sweepShort', { fewest: FEWEST });
    return this.unusual && !this.confirmed ? t('page.bench.sweepConfirm') : null;
  }

  /** The rows as they travel. */
  get sent() {
    return this.filled.map(row => sweepPoint(row, this.way, this.unit));
  }

  /** Where among all rows a sent one stands; -1 when it is gone. */
  rowOfSent = at => this.rows.indexOf(this.filled[at]);

  unit = column => (column === 'load' ? 'ohm' : this[`${column}Unit`] ?? METER_UNITS[column][0]);

  read(row) {
    return readRow(row, this.way, { units: this.units, unitOf: this.unit, fieldOf: column => this.fields.find(({ key }) => key === column) });
  }

  tone(row, verdicts = this.read(row)) {
    return toneOf(row, this.way, verdicts);
  }

  /** The rows with one number changed. */
  withNumber(i, column, text) {
    return this.rows.map((row, at) => (at === i ? { ...row, [column]: text } : row));
  }

  /** The rows with a resistor to take, in the first row that waits for one, and where that is. */
  withLoad(load) {
    const empty = this.rows.findIndex(row => !isFilled(row, this.way));
    const row = { ...NO_ROW, load };
    return empty < 0 ? { rows: [...this.rows, row], at: this.rows.length } : { rows: this.rows.map((each, i) => (i === empty ? row : each)), at: empty };
  }
}
