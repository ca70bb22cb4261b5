import { Day } from "@/ui/day";
import { Section } from "@/ui/section";
import type { BindingAgreement } from "../edited-data";

/** Every version of a call's agreement that was published, and whom it binds. */
export function AgreementVersions({ versions }: { readonly versions: readonly BindingAgreement[] }) {
  return (
    <div className="mt-12">
      <Section title="Who agreed to what">
        <ul className="grid gap-3">
          {versions.map(({ version, text, createdAt, binds, many }, at) => (
            <li key={version} className="rounded-sheet border border-line bg-sheet px-5 py-4 shadow-sheet">
              <p>
                <b>Version {version}</b>, since <Day at={createdAt} />
                {at === 0 ? ": the one that is agreed to now" : null}
              </p>
              <p className="wrap-anywhere text-soft">{bindsWords(binds, many)}</p>
              <details className="mt-2">
                <summary className="text-link min-h-6 text-sm">Its text</summary>
                <p className="mt-1 max-w-3xl whitespace-pre-wrap wrap-anywhere text-sm">{text}</p>
              </details>
            </li>
          ))}
        </ul>
      </Section>
    </div>
  );
}

function bindsWords(binds: BindingAgreement["binds"], many: number) {
  if (binds.length === 0) return "It binds nobody so far.";
  return (
    <>
      It binds{" "}
      {binds.map((name, at) => (
        <span key={at}>
          {at === 0 ? "" : at === many - 1 ? " and " : ", "}
          <bdi>{name ?? "somebody whose name was deleted"}</bdi>
        </span>
      ))}
      {many > binds.length ? ` and ${many - binds.length} more` : null}.
    </>
  );
}
