/** The only place that knows Lit. Elements draw into the page itself, so that labels, styles and tests reach them. */
import { LitElement, html, nothing, render, svg } from 'lit';
import { keyed } from 'lit/directives/keyed.js';
import { live } from 'lit/directives/live.js';
import { repeat } from 'lit/directives/repeat.js';

export { html, keyed, live, nothing, render, repeat, svg };

/** A custom element without a shadow; `properties` and `render()` as usual. */
export class PageElement extends LitElement {
  createRenderRoot() {
    return this;
  }
}

let count = 0;

/** An id unique in this page, to tie labels, hints and errors to their field. */
export const uniqueId = prefix => `${prefix}-${++count}`;
