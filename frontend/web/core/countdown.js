/** What is left until a time, for people. Times in ms. */

const MINUTE_MS = 60_000;

/** What is left as on a kitchen clock, "9:05" or "1:30:00"; never below 0. */
export function leftText(endsAt, now) {
  const seconds = Math.max(0, Math.ceil((endsAt - now) / 1000));
  const [hours, minutes] = [Math.floor(seconds / 3600), Math.floor(seconds / 60) % 60];
  const parts = hours ? [hours, two(minutes), two(seconds % 60)] : [minutes, two(seconds % 60)];
  return parts.join(':');
}

/** Whole minutes since a time, 0 in the first one; null while it is ahead. */
export const minutesOver = (endsAt, now) => (now < endsAt ? null : Math.floor((now - endsAt) / MINUTE_MS));

/** What is worth saying aloud: `five` or `one` minute left, `over`, or null while more is left. */
export function milestone(endsAt, now) {
  if (now >= endsAt) return 'over';
  if (endsAt - now <= MINUTE_MS) return 'one';
  return endsAt - now <= 5 * MINUTE_MS ? 'five' : null;
}

const two = number => String(number).padStart(2, '0');
