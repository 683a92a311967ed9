/** The line that sends a first reading, to be tried in a terminal: of a {cell, station}, or of the light when there is none. */
export function curl(origin, token, of) {
  const reading = of ? { id: '1', cell: of.cell ?? 'C1', kind: 'light', station: of.station ?? 'Lamp 1', voltage: '412 mV', current: '95 uA' }
    : { id: '1', light: '1520 lx' };
  return [
    `curl -X POST ${origin}/api/logger/readings \\`,
    `  -H "Authorization: Bearer ${token}" \\`,
    '  -H "Content-Type: application/json" \\',
    `  -d ${quoted(JSON.stringify(reading))}`,
  ].join('\n');
}

/** One word for a shell (POSIX), whatever a station is called. */
const quoted = text => `'${text.replaceAll("'", "'\\''")}'`;
