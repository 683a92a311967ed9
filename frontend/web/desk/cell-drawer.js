/** A cell's story beside the Desk: stages, readings, result and why, with what a teacher may do about each. */
import { get } from '../core/http.js';
import { clock } from '../core/format.js';
import { t } from '../core/texts.js';
import { PageElement, html, nothing, repeat } from '../kit/kit.js';
import { stagesOf, statesByStage } from '../bench/progress.js';
import { recipeList } from '../bench/recipe-list.js';
import { result } from '../bench/result.js';
import { sentenceOf } from '../pages/refusal.js';
import './outcome-form.js';
import './reading-line.js';

/**
 * `desk` as the Desk loads it, `cellId` of the cell to show, or null while closed. Fires `closed`, and `changed` after
 * something was written. Not a dialog: the list beside it stays at hand.
 */
class CellDrawer extends PageElement {
  static properties = { desk: { attribute: false }, cellId: {}, told: { state: true }, trouble: { state: true } };

  willUpdate(changed) {
    if (changed.has('cellId')) this.told = null;
    if (this.cellId && (changed.has('cellId') || changed.has('desk'))) this.#load();
  }

  updated(changed) {
    if (changed.has('cellId') && this.cellId) this.querySelector('h2')?.focus();
  }

  render() {
    const cell = this.desk.cells.find(({ id }) => id === this.cellId);
    if (!this.cellId) return nothing;
    const team = this.desk.teams.find(({ id }) => id === cell?.teamId);
    return html`<aside class="drawer" aria-labelledby="drawer-title" @keydown=${this.#escape} @changed=${this.#changed}>
      <div class="drawer-head"><h2 id="drawer-title" tabindex="-1">${cell ? t('page.bench.cell', { label: cell.label }) : t('page.bench.noSuchCell')}</h2>
        ${team ? html`<span class="who"><bw-mark .mark=${team.mark}></bw-mark> ${team.name}</span>` : nothing}
        <button class="button plain" @click=${this.#close}>${t('page.desk.closeDrawer')}</button></div>
      ${this.trouble ? html`<bw-notice tone="unusual" .text=${this.trouble}></bw-notice>` : nothing}
      ${cell && this.told ? this.#story(cell) : nothing}</aside>`;
  }

  #story(cell) {
    const { catalogue, day } = this.desk;
    const stages = stagesOf(cell, this.told.readings, catalogue);
    return html`<div class="flow story-of">
      ${result(this.told.result)}
      <section class="flow readings-of"><h3>${t('page.bench.readings')}</h3>
        ${this.told.readings.length ? html`<ul class="bare story">${repeat([...this.told.readings].reverse(), ({ id }) => id, reading => html`<li>${this.#reading(reading)}</li>`)}</ul>`
          : html`<p class="soft">${t('page.desk.noReading')}</p>`}</section>
      <section class="flow"><div class="apart"><h3>${t('page.bench.stages')}</h3><bw-cell .stages=${statesByStage(stages)}></bw-cell></div>
        <ol class="bare story">${cell.outcomes.map(outcome => this.#outcome(outcome))}</ol>
        ${day.resultsFinal ? nothing : html`<details class="fold"><summary>${t('page.desk.outcome')}</summary>
          <bw-desk-outcome .cell=${cell} .stages=${stages}></bw-desk-outcome></details>`}</section>
      <details class="fold"><summary>${t('page.bench.recipe')}</summary>${recipeList(cell, catalogue)}</details>
      ${day.resultsFinal ? html`<p class="soft">${t('page.desk.isFinal')}</p>` : nothing}</div>`;
  }

  #reading(reading) {
    const flags = this.desk.attention.items.filter(item => item.id.endsWith(`.${reading.id}`) && !item.putOffUntil);
    return html`<bw-reading-line .reading=${reading} .catalogue=${this.desk.catalogue} .flags=${flags} .dayId=${this.desk.day.id}
      .station=${this.desk.stations.find(({ id }) => id === reading.stationId)} ?fixed=${this.desk.day.resultsFinal}></bw-reading-line>`;
  }

  #outcome({ stage, passed, failure, note, acceptedAt, replacedBy }) {
    return html`<li class="story-line ${replacedBy ? 'out' : ''}"><bw-icon name=${passed ? 'fine' : 'impossible'}></bw-icon>
      <div><p><strong>${t(`catalogue.stage.${stage}`)}</strong> ${passed ? t('page.bench.worked') : t(`catalogue.failure.${failure}`)}
        <span class="soft small">${clock(acceptedAt)}</span></p>
        ${note ? html`<p class="soft small">${t('page.quoted', { words: note })}</p>` : nothing}
        ${replacedBy ? html`<p class="soft small">${t('page.desk.corrected')}</p>` : nothing}</div></li>`;
  }

  async #load() {
    const id = this.cellId;
    try {
      const [readings, outcome] = await Promise.all([get(`/api/cells/${id}/readings`), get(`/api/cells/${id}/result`)]);
      if (id !== this.cellId) return;
      this.told = { readings, result: outcome };
      this.trouble = null;
    } catch (error) {
      this.trouble = sentenceOf(error);
    }
  }

  #changed = event => {
    event.stopPropagation();
    this.dispatchEvent(new CustomEvent('changed'));
    this.#load();
  };

  #escape = event => {
    if (event.key === 'Escape') this.#close();
  };

  #close = () => this.dispatchEvent(new CustomEvent('closed'));
}

customElements.define('bw-cell-drawer', CellDrawer);
