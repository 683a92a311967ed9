import { put as toServer } from '../core/http.js';
import { newId } from '../core/ids.js';

/**
 * Takes the set-up of one day along to another: its stations as they stand, without their readings, and its plan. Each part
 * has its id from the start, so that `into(labDayId)` may be called again after a failure.
 */
export function setUpOf(stations, plan, put = toServer) {
  const places = stations.map(station => ({ id: newId(), station }));
  const planId = newId();
  return {
    async into(labDayId) {
      for (const { id, station } of places) await put(`/api/stations/${id}`, stationRequest(labDayId, station));
      if (plan) await put(`/api/labdays/${labDayId}/plan/versions/${planId}`, plan);
    },
  };
}

/** The station as it is set up now, corrections included. */
export function stationRequest(labDayId, { name, settings }) {
  const { lamp, instrument, distance, angle } = settings.at(-1);
  return { labDayId, name, lamp, instrument, distance, angle };
}
