import { PageElement, html, svg, nothing } from './element.js';

const PATHS = {
  fine: svg`<path d="m5 12.5 4.5 4.5L19 7"/>`,
  unusual: svg`<path d="M12 4 21.5 20h-19z"/><path d="M12 10v4.5M12 17v.5"/>`,
  impossible: svg`<path d="M8 3h8l5 5v8l-5 5H8l-5-5V8z"/><path d="m9 9 6 6m0-6-6 6"/>`,
  info: svg`<circle cx="12" cy="12" r="9"/><path d="M12 11v6M12 7v.5"/>`,
  waiting: svg`<circle cx="12" cy="12" r="9"/><path d="M12 7v5.5l3.5 2"/>`,
  phone: svg`<rect x="7" y="3" width="10" height="18" rx="2"/><path d="M11 18h2"/>`,
  sent: svg`<path d="m2.5 12.5 4 4.5L15 7M11 15.5l1.5 1.5L21 7"/>`,
  hot: svg`<path d="M5 20h14M8 16c-2-2 2-4 0-6s0-4 1-5m3 11c-2-2 2-4 0-6s0-4 1-5m3 11c-2-2 2-4 0-6s0-4 1-5"/>`,
  flame: svg`<path d="M12 21c-3.9 0-6.5-2.6-6.5-6.2 0-3 2-4.8 3.2-7 1 .9 1.6 1.9 1.8 3.1C12 9 12.6 6.5 12.2 3c3.8 2.3 6.3 6.8 6.3 11.3C18.5 18.2 15.9 21 12 21z"/>`,
  drop: svg`<path d="M12 3.5c3 4.3 5.5 7.3 5.5 10.7a5.5 5.5 0 0 1-11 0c0-3.4 2.5-6.4 5.5-10.7z"/>`,
  shard: svg`<path d="m4 20 3-13 6 4 7-7-2 16z"/>`,
  powder: svg`<path d="M3.5 19.5h17L12 11z"/><path d="M8 7v.1M12 4.5v.1M16 7v.1"/>`,
  leaf: svg`<path d="M5 19C3.5 10 9 4.5 20 4c.5 10-4.5 16-13 14"/><path d="M5 19c2-4.5 5-7.5 9-9.5"/>`,
  adult: svg`<circle cx="12" cy="7" r="3.5"/><path d="M5 20.5c.3-4.7 3-7 7-7s6.7 2.3 7 7z"/>`,
  remove: svg`<path d="m7 7 10 10M17 7 7 17"/>`,
  add: svg`<path d="M12 5v14M5 12h14"/>`,
  open: svg`<path d="M12 4v11m0 0 4.5-4.5M12 15l-4.5-4.5M4 20h16"/>`,
  back: svg`<path d="m14 5-7 7 7 7"/>`,
  again: svg`<path d="M19 7v5h-5M18.5 12a7 7 0 1 1-2-5.5L19 9"/>`,
  toggles: svg`<path d="M3 17h4V7h5v10h5V7h4"/>`,
  next: svg`<path d="m10 5 7 7-7 7"/>`,
  light: svg`<circle cx="12" cy="12" r="4"/><path d="M12 3v2m0 14v2M3 12h2m14 0h2M5.6 5.6 7 7m10 10 1.4 1.4M18.4 5.6 17 7M7 17l-1.4 1.4"/>`,
  dark: svg`<path d="M4 9h16v11H4zM2.5 5.5h19V9h-19zM10 13h4"/>`,
  sweep: svg`<path d="M4 4v16h16"/><path d="M4 7c9 0 11 2 13 13"/>`,
};

/** A line drawing of 24 units; without a `label` it is decoration and hidden from screen readers. */
class Icon extends PageElement {
  static properties = { name: {}, label: {} };

  render() {
    return html`<svg viewBox="0 0 24 24" fill="none" stroke="currentColor" stroke-width="2" stroke-linecap="round"
      stroke-linejoin="round" role=${this.label ? 'img' : nothing} aria-label=${this.label ?? nothing}
      aria-hidden=${this.label ? nothing : 'true'}>${PATHS[this.name] ?? nothing}</svg>`;
  }
}

customElements.define('bw-icon', Icon);
