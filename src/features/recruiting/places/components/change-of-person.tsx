import type { BoardPerson } from "../board-people";
import { ChangePlace } from "./change-place";
import type { PlacesFrame } from "./places-frame";

/**
 * How the rows of a table change a person's size: the address, and the form of the person being changed.
 *
 * @param person the person being changed; null for nobody.
 */
export function changeOfPerson(person: BoardPerson | null, frame: PlacesFrame) {
  const changeHref = frame.hrefWith({ change: undefined });
  if (person === null || person.applicant === null) return { changeHref, changing: null };
  const { applicant, name, size, standing } = person;
  const form = (
    <ChangePlace
      closeHref={changeHref}
      callId={frame.callId}
      applicationId={applicant.applicationId}
      name={name}
      sizes={frame.sizeChoices.filter(({ id }) => id !== size)}
      standing={
        standing === "locked" || standing === "placed" ? standing : applicant.isLeftWaiting ? "left waiting" : "waiting"
      }
    />
  );
  return { changeHref, changing: { id: person.key, form } };
}
