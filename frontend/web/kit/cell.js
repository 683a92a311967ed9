import { PageElement, html, svg, nothing } from './element.js';

/**
 * A cell in cross-section, drawn as far as it has been built: two plates of glass set off against each other, the oxide
 * film between them (dotted once baked, berry once dyed), carbon, electrolyte, and light when it is measured.
 * `stages` maps stage keys to passed, failed, next or open; `label` names it for screen readers.
 */
class Cell extends PageElement {
  static properties = { stages: { attribute: false }, label: {} };

  constructor() {
    super();
    this.stages = {};
  }

  render() {
    return html`<svg class="cell" viewBox="0 0 120 76" role=${this.label ? 'img' : nothing}
      aria-label=${this.label ?? nothing} aria-hidden=${this.label ? nothing : 'true'}>
      ${this.#layer('film', svg`<rect x="28" y="43" width="62" height="13"/>`, this.#film())}
      ${this.#is('bake', 'passed') ? svg`<path class="grain" d="M33 47h54M31 51h56M35 54h50"/>` : nothing}
      ${this.#layer('fill', svg`<rect x="28" y="36.5" width="62" height="6.5"/>`)}
      ${this.#layer('counterElectrode', svg`<rect x="30" y="31" width="66" height="5.5"/>`)}
      <rect class="plate" x="4" y="56" width="90" height="9" rx="1.5"/>
      <rect class="plate" x="26" y="22" width="90" height="9" rx="1.5"/>
      ${this.#is('measure', 'passed') ? svg`<path class="rays" d="m44 3-6 13M62 3l-6 13M80 3l-6 13"/>` : nothing}
      ${Object.values(this.stages).includes('failed') ? svg`<path class="broken" d="m50 26 20 28m0-28L50 54"/>` : nothing}
    </svg>`;
  }

  #film() {
    return this.#is('dye', 'passed') ? 'dyed' : '';
  }

  #layer(stage, shape, extra = '') {
    return svg`<g class="layer ${stage} ${this.stages[stage] ?? 'open'} ${extra}">${shape}</g>`;
  }

  #is(stage, state) {
    return this.stages[stage] === state;
  }
}

customElements.define('bw-cell', Cell);
