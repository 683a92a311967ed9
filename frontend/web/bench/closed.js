/** Says so wherever something could be typed while the day takes nothing. */
import { t } from '../core/texts.js';
import { html, nothing } from '../kit/kit.js';

export const closedNotice = ({ labDay }) => (labDay && !labDay.entryOpen
  ? html`<bw-notice tone="unusual" .text=${t('page.bench.closed')}></bw-notice>` : nothing);
