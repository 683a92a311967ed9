/** A team's place as text: "2", or "2–4" where the uncertainties allow several; null without a result. */
export function placeOf({ place, placeLow, placeHigh }) {
  if (place == null) return null;
  const low = placeLow ?? place;
  const high = placeHigh ?? place;
  return low === high ? String(low) : `${low}–${high}`;
}
