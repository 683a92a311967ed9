import { t } from '../core/texts.js';
import { MICROWATT_PER_CM2 } from '../core/units.js';

/**
 * How what is compared reads: `scale` of one step of what is shown, `title` of its axis, `middle` and `mean` of table columns,
 * `column` of a data file.
 */
export const measureOf = ({ measure, outcome }) => ({
  power: () => ({ scale: MICROWATT_PER_CM2, title: t('page.findings.power'), middle: t('page.findings.median'), mean: t('page.findings.mean'), column: 'power_density_uW_cm2' }),
  ratioToControl: () => ({ scale: 1, title: t('page.findings.ratio'), middle: t('page.findings.medianOf', { what: t('page.findings.ratio') }), mean: t('page.findings.ratio'), column: 'times_control_cell' }),
  outcome: () => ({ scale: 1, title: outcome, middle: t('page.findings.medianOf', { what: outcome }), mean: outcome, column: outcome }),
}[measure])();
