/** A logger's file beside the typed rows of a sweep: what is in it, what to mend, and how it counts the current. */
import { textOf } from '../core/letters.js';
import { t } from '../core/texts.js';
import { PageElement, html, nothing } from '../kit/kit.js';
import { MOST_ROWS, readSweepFile, thinned, turned } from './sweep-file.js';

const MOST_TOLD = 20;

/** Takes a `catalogue`; fires `read` with {rows, voltageUnit, currentUnit} whenever there are rows to take. */
class SweepFromFile extends PageElement {
  static properties = { catalogue: { attribute: false }, found: { state: true }, negative: { state: true }, name: { state: true } };

  render() {
    return html`<details class="fold"><summary>${t('page.bench.sweepFile')}</summary><div class="flow">
      <div class="field file"><label for="sweep-file">${t('page.bench.sweepFileChoose')}</label><p class="hint">${t('page.bench.sweepFileHint')}</p>
        <input id="sweep-file" type="file" accept=".csv,.tsv,.txt,text/csv,text/plain" @click=${({ target }) => { target.value = ''; }}
          @change=${({ target }) => this.#choose(target)}></div>
      <div role="status" class="flow">${this.found ? this.#content() : nothing}</div></div></details>`;
  }

  #content() {
    const { faults, rows } = this.found;
    if (faults.length > 0) return this.#faults(faults);
    const words = rows.length > MOST_ROWS ? t('page.bench.sweepFileThinned', { name: this.name, rows: rows.length, taken: MOST_ROWS })
      : t('page.bench.sweepFileTaken', { name: this.name, rows: rows.length });
    return html`<bw-notice tone="fine" .text=${words}></bw-notice>
      <bw-choices tall .legend=${t('page.bench.sweepFileSign')} .value=${this.negative ? 'negative' : 'positive'} @chosen=${({ detail }) => this.#count(detail === 'negative')}
        .options=${['positive', 'negative'].map(key => ({ key, label: t(`page.bench.sweepFileSign.${key}`) }))}></bw-choices>
      <p class="soft small">${t(this.found.negative ? 'page.bench.sweepFileGuess.negative' : 'page.bench.sweepFileGuess.positive')}</p>`;
  }

  #faults(faults) {
    return html`<bw-notice tone="impossible" .text=${t('page.bench.sweepFileMend', { name: this.name, count: faults.length })}></bw-notice>
      <ul class="small">${faults.slice(0, MOST_TOLD).map(({ row, column, value, what, limit }) => html`<li><strong>${row == null ? nothing
        : t('page.bench.sweepFileRow', { row })}${column ? ` · ${column}` : nothing}</strong> ${t(`page.bench.sweepFileFault.${what}`, { value, limit })}</li>`)}</ul>`;
  }

  async #choose({ files: [file] }) {
    if (!file) return;
    this.name = file.name;
    this.found = readSweepFile(await textOf(file), this.catalogue);
    this.#count(this.found.negative);
  }

  #count(negative) {
    this.negative = negative;
    const rows = thinned(this.found.rows);
    if (rows.length === 0) return;
    this.dispatchEvent(new CustomEvent('read', { detail: {
      rows: negative ? turned(rows) : rows, voltageUnit: this.found.units.voltage, currentUnit: this.found.units.current,
    } }));
  }
}

customElements.define('bw-sweep-from-file', SweepFromFile);
