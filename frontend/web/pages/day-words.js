import { plain } from '../core/format.js';
import { t } from '../core/texts.js';

/** The reference conditions of a lab day in one line. */
export function conditions({ referenceIrradianceWm2: irradiance, referenceAreaCm2: area }) {
  return t('page.days.conditions', { irradiance: plain(irradiance), area: plain(area) });
}
