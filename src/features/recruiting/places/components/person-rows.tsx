"use client";

import Link from "next/link";
import type { ReactNode } from "react";
import { TABLE_ROW } from "@/ui/table-frame";
import type { Standing } from "../board-people";
import { PersonShape } from "./person-shape";
import { STANDING_MARKS, STANDING_WORDS } from "./standing-copy";

/* A client component that draws rows from a few strings each, because a server component would send every cell twice. */

interface PersonWords {
  readonly id: string;
  readonly name: string;
  readonly standing: Standing;
  /** The designer can change something about them. */
  readonly mayChange: boolean;
}

export interface PlacedWords extends PersonWords {
  /** One per measurement: how their body differs from the size, and whether it is out of reach; null where unknown. */
  readonly fit: {
    readonly differences: readonly (readonly [says: string, isBeyond: boolean])[];
    readonly word: string;
    readonly misfit: string;
  } | null;
  readonly choice: string | null;
  readonly why: string;
}

export interface WaitingWords extends PersonWords {
  /** By measurement. */
  readonly lengths: readonly string[];
  readonly why: string;
}

interface RowsProps<Words> {
  readonly rows: readonly Words[];
  /** The page's address, to which the id of the person to change is added. */
  readonly changeHref: string;
  /** The form of the person being changed. */
  readonly changing: { readonly id: string; readonly form: ReactNode } | null;
}

/** The people in a size. */
export function PlacedRows({
  measurements,
  rows,
  ...change
}: RowsProps<PlacedWords> & { readonly measurements: number }) {
  return rows.map((row) => (
    <PersonRow key={row.id} person={row} columns={measurements + 4} {...change}>
      {row.fit === null ? (
        <td colSpan={measurements + 1} className="text-soft">
          measurement not known
        </td>
      ) : (
        <>
          {row.fit.differences.map(([says, isBeyond], index) => (
            <td key={index} className="min-w-28">
              {isBeyond ? <span aria-hidden="true">▲ </span> : null}
              {says}
            </td>
          ))}
          <td className="min-w-24 whitespace-nowrap">
            {row.fit.word} <span className="text-soft">({row.fit.misfit})</span>
          </td>
        </>
      )}
      <td className="min-w-28">{row.choice ?? "–"}</td>
      <td className="min-w-56">{row.why}</td>
    </PersonRow>
  ));
}

/** Who is waiting, with their measurements and why. */
export function WaitingRows({ rows, ...change }: RowsProps<WaitingWords>) {
  return rows.map((row) => (
    <PersonRow key={row.id} person={row} columns={row.lengths.length + 2} {...change}>
      {row.lengths.map((length, index) => (
        <td key={index} className="min-w-24 whitespace-nowrap">
          {length}
        </td>
      ))}
      <td className="min-w-64">{row.why}</td>
    </PersonRow>
  ));
}

interface PersonRowProps extends Omit<RowsProps<never>, "rows"> {
  readonly person: PersonWords;
  /** Of the whole table. */
  readonly columns: number;
  /** The cells after the name. */
  readonly children: ReactNode;
}

/** A person's row; the form that changes their size stands below it, as wide as the page. */
function PersonRow({ person, columns, children, ...change }: PersonRowProps) {
  const { changing } = change;
  return (
    <>
      <tr className={TABLE_ROW}>
        <PersonHead person={person} {...change} />
        {children}
      </tr>
      {person.mayChange && changing?.id === person.id ? (
        <tr className={TABLE_ROW}>
          <td colSpan={columns}>
            <div className="sticky left-3 max-w-[calc(100vw-4rem)]">{changing.form}</div>
          </td>
        </tr>
      ) : null}
    </>
  );
}

/** A name with its mark on the ruler, what the mark means, and a link to change the size. */
function PersonHead({
  person: { id, name, standing, mayChange },
  changeHref,
  changing,
}: Omit<RowsProps<never>, "rows"> & { readonly person: PersonWords }) {
  return (
    <th scope="row" className="w-52 min-w-36 font-normal align-top">
      <svg width="16" height="16" aria-hidden="true" className="mr-1.5 inline-block align-[-2px]">
        <svg x="8" y="8" overflow="visible">
          <PersonShape mark={STANDING_MARKS[standing]} r={5} />
        </svg>
      </svg>
      <bdi title={name} className="font-semibold wrap-anywhere">
        {shortened(name)}
      </bdi>
      <span className="block text-sm text-soft">{STANDING_WORDS[standing]}</span>
      {!mayChange || changing?.id === id ? null : (
        <Link
          href={`${changeHref}${changeHref.includes("?") ? "&" : "?"}change=${id}`}
          scroll={false}
          prefetch={false}
          className="inline-flex min-h-9 items-center text-sm text-link"
        >
          Change …{" "}
          <span className="sr-only">
            {" "}
            the size of <bdi>{name}</bdi>{" "}
          </span>
        </Link>
      )}
    </th>
  );
}

/** Longer names would push everything else out of sight. */
const MOST_LETTERS = 60;

function shortened(name: string): string {
  const letters = [...name];
  return letters.length > MOST_LETTERS ? `${letters.slice(0, MOST_LETTERS - 1).join("")}…` : name;
}
