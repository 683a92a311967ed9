/** Tables as a teacher looks for them: results first, then what was built, measured and lit, then the day itself. */
const GROUPS = [
  ['results', ['results']],
  ['built', ['cells', 'recipes', 'stages', 'work']],
  ['measured', ['readings', 'sweep_points', 'toggles', 'set_asides', 'control_cell']],
  ['light', ['stations', 'irradiance', 'evenness', 'spectra']],
  ['day', ['day', 'teams', 'day_changes', 'paper']],
];

/** The resources of a data package as `[group, tables]`; one that no group knows stands with the day. */
export function grouped(resources) {
  const named = new Map(resources.map(table => [nameOf(table), table]));
  const groups = GROUPS.map(([group, names]) => [group, names.filter(name => named.has(name)).map(name => taken(named, name))]);
  groups.at(-1)[1].push(...named.values());
  return groups.filter(([, tables]) => tables.length > 0);
}

/** The name of a table's file without its ending. */
export const nameOf = ({ path }) => path.replace(/\.csv$/, '');

/** How many rows a table has. */
export const rowsOf = (resources, name) => resources.find(table => nameOf(table) === name)?.rows ?? 0;

function taken(named, name) {
  const table = named.get(name);
  named.delete(name);
  return table;
}
