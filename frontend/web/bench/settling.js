/** How a filled cell settles: its light readings since the last filling, and when it is worth reading again. */
import { get } from '../core/http.js';
import { clock, fixed } from '../core/format.js';
import { t } from '../core/texts.js';
import { PageElement, html, nothing } from '../kit/kit.js';

const FEWEST = 2;

/** `cellId`, and `mark`, which changes when there may be something new. Draws nothing from fewer than two readings. */
class SettlingPlot extends PageElement {
  static properties = { cellId: {}, mark: {}, answer: { state: true } };

  willUpdate(changed) {
    if (changed.has('mark') || changed.has('cellId')) this.#fetch();
  }

  async updated() {
    const canvas = this.querySelector('canvas');
    if (!canvas) return;
    const { drawSettling } = await import('../charts/settling.js');
    if (!canvas.isConnected) return;
    this.chart ??= drawSettling(canvas);
    this.chart.show(pictureOf(this.answer));
  }

  disconnectedCallback() {
    super.disconnectedCallback();
    this.chart?.end();
    this.chart = null;
  }

  render() {
    const { readings = [], comeBackAt, state } = this.answer ?? {};
    if (readings.length < FEWEST) return nothing;
    return html`<figure class="settling"><figcaption><h3>${t('page.bench.settlingPlot')}</h3>
        <p>${state === 'settling' ? t('page.bench.comeBack', { time: clock(comeBackAt) }) : t(`page.bench.settlingState.${state}`)}</p></figcaption>
      <div class="plot-box"><canvas></canvas></div>
      <details class="fold"><summary>${t('page.bench.asTable')}</summary><table>
        <thead><tr><th scope="col">${t('page.bench.time')}</th><th scope="col" class="number">${t('page.bench.ofLatest')}</th></tr></thead>
        <tbody>${percents(readings).map(({ x, y }) => html`<tr><td>${clock(x)}</td><td class="number">${fixed(y, 0)} %</td></tr>`)}</tbody></table></details></figure>`;
  }

  async #fetch() {
    try {
      this.answer = await get(`/api/cells/${this.cellId}/settling`);
    } catch {
      // Bad Wi-Fi: the last picture stays, and the next reading asks again.
    }
  }
}

/** In per cent of the latest reading, over time. */
export function percents(moments, latest = moments.at(-1)) {
  return moments.map(({ at, currentPerLight }) => ({ x: Date.parse(at), y: 100 * currentPerLight / latest.currentPerLight }));
}

const pictureOf = ({ readings, course }) => ({
  dots: percents(readings), line: percents(course, readings.at(-1)), clock,
  up: t('page.bench.perLight'), sentence: t('page.bench.settlingSentence', { readings: readings.length }),
});

customElements.define('bw-settling', SettlingPlot);
