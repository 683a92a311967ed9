/**
 * Teams that nothing tells apart share a place; on the Wall a bracket holds them together.
 *
 * @returns {{words: string, size: number}} of the row at `at`: words of the style sheet for its part of the bracket, ''
 *   without one; in the first row of a bracket how many rows it spans, else 0
 */
export function tieOf(teams, at) {
  const same = other => other?.place != null && other.place === teams[at].place;
  const above = same(teams[at - 1]);
  const below = same(teams[at + 1]);
  if (!above && !below) return { words: '', size: 0 };
  const words = ['tied', above ? '' : 'first', below ? '' : 'last'].filter(Boolean).join(' ');
  return { words, size: above ? 0 : teams.filter(same).length };
}
