"use client";

import { LinkArea } from "@/ui/link-area";
import { SelectBox } from "@/ui/select-shown";
import { TableFrame } from "@/ui/table-frame";
import { SEVERAL_TESTERS } from "./act-on-several";

/** A tester as the table shows them, in words. */
export interface ListedPerson {
  readonly id: string;
  readonly name: string;
  /** The designer's, about them; "" for none. */
  readonly note: string;
  readonly size: string;
  readonly stage: string;
  /** The day on which they were last heard of; "" for never. */
  readonly heard: string;
  /** `in 12 days`; "" where nothing is due. */
  readonly due: string;
  readonly needs: readonly string[];
  /** Good to know, and not urgent. */
  readonly remarks: readonly string[];
  readonly action: { readonly label: string; readonly href: string } | null;
}

interface PeopleTableProps {
  /** The address below which each tester's page is found. */
  readonly base: string;
  readonly people: readonly ListedPerson[];
  /** Whether several can be selected. */
  readonly mayEdit: boolean;
}

/**
 * A row a tester; on a phone two lines. A client component, so that its rows are sent once, as text, and not again as
 * elements.
 */
export function PeopleTable({ base, people, mayEdit }: PeopleTableProps) {
  return (
    <LinkArea>
      <TableFrame label="Testers">
        <table className="people-table">
          <thead>
            <tr>
              <th scope="col">Tester</th>
              <th scope="col">Size</th>
              <th scope="col">Stage</th>
              <th scope="col">Last heard</th>
              <th scope="col">Due</th>
              <th scope="col">Needs attention</th>
              <th scope="col">Action</th>
            </tr>
          </thead>
          <tbody>
            {people.map(({ id, name, note, size, stage, heard, due, needs, remarks, action }) => (
              <tr key={id}>
                <th scope="row">
                  {mayEdit ? <SelectBox form={SEVERAL_TESTERS} name="testerId" value={id} about={name} /> : null}
                  <a href={`${base}/${id}`}>
                    <bdi>{name}</bdi>
                  </a>
                  {note ? <small>{note}</small> : null}
                </th>
                <td className="size">{size}</td>
                <td className="stage">{stage}</td>
                <td className="heard">{heard}</td>
                <td className="due">{due}</td>
                <td>
                  <Needs {...{ needs, remarks }} />
                </td>
                <td className="action">{action === null ? null : <a href={action.href}>{action.label}</a>}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </TableFrame>
    </LinkArea>
  );
}

function Needs({ needs, remarks }: Pick<ListedPerson, "needs" | "remarks">) {
  if (needs.length + remarks.length === 0) return null;
  return (
    <ul className="needs">
      {needs.map((need) => (
        <li key={need} className="urgent">
          {need}
        </li>
      ))}
      {remarks.map((remark) => (
        <li key={remark}>{remark}</li>
      ))}
    </ul>
  );
}
