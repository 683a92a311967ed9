/** When this day's lesson ends, as the teacher typed it last on this screen: "15:40". */
const key = dayId => `berrywatt.lessonEnd.${dayId}`;

export function lessonEnd(dayId) {
  try {
    return sessionStorage.getItem(key(dayId));
  } catch {
    return null;
  }
}

export function keepLessonEnd(dayId, time) {
  try {
    sessionStorage.setItem(key(dayId), time);
  } catch {
    // A private tab may refuse storage; the teacher then types it again.
  }
}
