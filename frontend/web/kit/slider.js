import { PageElement, html, live, nothing } from './element.js';

const STEPS = 400;

/**
 * A slider for a positive quantity beside its typed field, never instead of it. `min` and `max` bound it; `log` gives each
 * factor the same way. `said` is how a screen reader says the value. Fires `slid` with the number.
 */
class Slider extends PageElement {
  static properties = {
    label: {}, min: { type: Number }, max: { type: Number }, value: { type: Number }, said: {}, log: { type: Boolean },
  };

  render() {
    const at = this.#placeOf(this.value);
    return html`<input type="range" class="slider" min="0" max=${STEPS} step="1" aria-label=${this.label}
      aria-valuetext=${this.said || nothing} .value=${live(String(at))} @input=${this.#slide}>`;
  }

  #placeOf(value) {
    if (!Number.isFinite(value)) return 0;
    const within = Math.min(this.max, Math.max(this.min, value));
    const part = this.log ? Math.log(within / this.min) / Math.log(this.max / this.min)
      : (within - this.min) / (this.max - this.min);
    return Math.round(part * STEPS);
  }

  #slide(event) {
    const part = Number(event.target.value) / STEPS;
    const value = this.log ? this.min * (this.max / this.min) ** part : this.min + (this.max - this.min) * part;
    this.dispatchEvent(new CustomEvent('slid', { detail: value, bubbles: true }));
  }
}

customElements.define('bw-slider', Slider);
