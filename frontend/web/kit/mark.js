import { MARK_BOX, markOf } from '../core/marks.js';
import { PageElement, html, nothing } from './element.js';

export { markOf };

/** A team's mark beside its name. */
class Mark extends PageElement {
  static properties = { mark: { type: Number } };

  render() {
    if (this.mark == null) return nothing;
    const { outline, colour } = markOf(this.mark);
    return html`<svg class="mark" viewBox="${-MARK_BOX} ${-MARK_BOX} ${2 * MARK_BOX} ${2 * MARK_BOX}" aria-hidden="true"
      ><path d=${outline} fill=${colour ?? 'currentColor'}/></svg>`;
  }
}

customElements.define('bw-mark', Mark);
