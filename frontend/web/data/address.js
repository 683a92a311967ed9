import { DECIMAL } from '../core/language.js';

/** Where a table is fetched, written for a spreadsheet of this language or plainly. */
export function tableAddress(labDayId, name, reader, decimal = DECIMAL) {
  const ways = reader === 'spreadsheet' ? `?spreadsheet=true&decimalComma=${decimal === ','}` : '';
  return `/api/labdays/${labDayId}/tables/${name}.csv${ways}`;
}

export const allTablesAddress = labDayId => `/api/labdays/${labDayId}/tables.zip`;

export const archiveAddress = labDayId => `/api/labdays/${labDayId}/archive`;

/** Where an empty table for paper records is fetched. */
export const paperAddress = (table, decimal = DECIMAL) => `/api/paper/${table}.csv?decimalComma=${decimal === ','}`;
