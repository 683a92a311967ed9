import { PageElement, html, svg, nothing } from './element.js';

/**
 * Colour and shape of teams, in order of creation: the colour-blind-safe set of Okabe and Ito (2008), each with a shape
 * of its own, so that colour is never alone. Charts draw the same pairs.
 */
export const MARKS = [
  { colour: '#0072b2', shape: 'circle' },
  { colour: '#d55e00', shape: 'cross' },
  { colour: '#009e73', shape: 'plus' },
  { colour: '#cc79a7', shape: 'star' },
  { colour: '#56b4e9', shape: 'diamond' },
  { colour: '#e69f00', shape: 'triangle' },
  { colour: '#f0e442', shape: 'square' },
  { colour: 'currentColor', shape: 'dash' },
];

/** The pair for a team's mark; from the ninth team on the pairs repeat and the name tells them apart. */
export const markOf = mark => MARKS[mark % MARKS.length];

const SHAPES = {
  circle: fill => svg`<circle cx="10" cy="10" r="7.5" fill=${fill}/>`,
  cross: fill => svg`<path d="m4 4 12 12M16 4 4 16" stroke=${fill} stroke-width="4.5"/>`,
  plus: fill => svg`<path d="M10 2v16M2 10h16" stroke=${fill} stroke-width="4.5"/>`,
  star: fill => svg`<path d="M10 1v18M2.2 5.5l15.6 9M17.8 5.5l-15.6 9" stroke=${fill} stroke-width="3.5"/>`,
  diamond: fill => svg`<path d="m10 1.5 8.5 8.5-8.5 8.5L1.5 10z" fill=${fill}/>`,
  triangle: fill => svg`<path d="m10 2 8.5 15.5h-17z" fill=${fill}/>`,
  square: fill => svg`<path d="M3 3h14v14H3z" fill=${fill}/>`,
  dash: fill => svg`<path d="M1 10h18" stroke=${fill} stroke-width="5"/>`,
};

/** A team's mark beside its name; filled shapes carry a dark edge, since three of the colours are pale on white. */
class Mark extends PageElement {
  static properties = { mark: { type: Number } };

  render() {
    if (this.mark == null) return nothing;
    const { colour, shape } = markOf(this.mark);
    return html`<svg class="mark ${shape}" viewBox="0 0 20 20" aria-hidden="true">${SHAPES[shape](colour)}</svg>`;
  }
}

customElements.define('bw-mark', Mark);
