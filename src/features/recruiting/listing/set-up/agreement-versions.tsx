import { Day } from "@/ui/day";
import { Section } from "@/ui/section";
import type { BindingAgreement } from "../edited-data";

/** Every published version of a call's agreement, and who agreed to it. */
export function AgreementVersions({ versions }: { readonly versions: readonly BindingAgreement[] }) {
  return (
    <div className="mt-12">
      <Section title="Who agreed to what">
        <ul className="grid gap-3">
          {versions.map(({ version, text, createdAt, binds, many }, index) => (
            <li key={version} className="rounded-sheet border border-line bg-sheet px-5 py-4 shadow-sheet">
              <p>
                <b>Version {version}</b>, since <Day at={createdAt} />
                {index === 0 ? ": the current version" : null}
              </p>
              <p className="wrap-anywhere text-soft">{bindsWords(binds, many)}</p>
              <details className="mt-2">
                <summary className="text-link min-h-6 text-sm">Show text</summary>
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
  if (binds.length === 0) return "Nobody has agreed to this version yet.";
  return (
    <>
      Agreed to by{" "}
      {binds.map((name, index) => (
        <span key={index}>
          {index === 0 ? "" : index === many - 1 ? " and " : ", "}
          <bdi>{name ?? "a former applicant"}</bdi>
        </span>
      ))}
      {many > binds.length ? ` and ${many - binds.length} more` : null}.
    </>
  );
}
