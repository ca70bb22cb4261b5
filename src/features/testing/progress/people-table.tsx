"use client";

import { LinkArea } from "@/ui/link-area";
import { TableFrame } from "@/ui/table-frame";

/** A tester as the table shows them, in words. */
export interface ListedPerson {
  readonly id: string;
  readonly name: string;
  /** The designer's, about them; "" for none. */
  readonly note: string;
  readonly size: string;
  readonly state: string;
  readonly since: string;
  readonly needs: readonly string[];
}

interface PeopleTableProps {
  /** The address below which each tester's page is found. */
  readonly base: string;
  readonly people: readonly ListedPerson[];
}

/**
 * A table at a desk; on a phone each row is a card of its own. A client component, so that its
 * rows are sent once, as text, and not again as elements.
 */
export function PeopleTable({ base, people }: PeopleTableProps) {
  return (
    <LinkArea>
      <TableFrame label="Testers">
        <table className="people-table">
          <thead>
            <tr>
              <th scope="col">Tester</th>
              <th scope="col">Size</th>
              <th scope="col">Progress</th>
              <th scope="col">Needs attention</th>
            </tr>
          </thead>
          <tbody>
            {people.map(({ id, name, note, size, state, since, needs }) => (
              <tr key={id}>
                <th scope="row">
                  <a href={`${base}/${id}`}>
                    <bdi>{name}</bdi>
                  </a>
                  {note ? <small>{note}</small> : null}
                </th>
                <td data-label="Size">{size}</td>
                <td>
                  {state} <small>{since}</small>
                </td>
                <Needs needs={needs} />
              </tr>
            ))}
          </tbody>
        </table>
      </TableFrame>
    </LinkArea>
  );
}

function Needs({ needs }: Pick<ListedPerson, "needs">) {
  if (needs.length === 0) return <td className="nothing">nothing</td>;
  return (
    <td>
      <ul className="needs">
        {needs.map((need) => (
          <li key={need}>{need}</li>
        ))}
      </ul>
    </td>
  );
}
