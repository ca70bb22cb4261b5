"use client";

import { AskedForm } from "@/ui/asked-form";
import { describedBy, Field, TextInput } from "@/ui/field";
import { useBrowserZone } from "@/ui/use-browser-zone";
import { publishVersion } from "./publish-actions";

interface PublishFormProps {
  readonly patternId: string;
  readonly revisionNumber: number;
  /** No version is published yet. */
  readonly isFirst: boolean;
}

interface Fields extends Record<string, unknown> {
  readonly label: string;
  readonly day: string;
}

/** Marks a revision as published. */
export function PublishForm({ patternId, revisionNumber, isFirst }: PublishFormProps) {
  const timeZone = useBrowserZone() ?? "UTC";
  return (
    <AskedForm<Fields>
      question="Mark as published"
      about={`revision ${revisionNumber}`}
      intro={
        isFirst
          ? "The pattern is released with its first version: corrections after that are errata, and testers who agreed to wait for the release are told that they may show their photos, where Sizewright sends mail."
          : "Errata after that are of this version."
      }
      action={publishVersion}
      sends={{ patternId, revisionNumber: String(revisionNumber), timeZone }}
      button={`Mark revision ${revisionNumber} as published`}
      waiting="Saving …"
    >
      {({ label, day }) => (
        <>
          <Field id={label.id} label="Version" hint="As your readers see it, such as 1.0." errors={label.errors}>
            <TextInput
              id={label.id}
              name={label.name}
              defaultValue={label.initialValue}
              autoComplete="off"
              className="max-w-40"
              aria-describedby={describedBy(label.id)}
            />
          </Field>
          <Field id={day.id} label="Published on" hint="Today or earlier." errors={day.errors}>
            <TextInput
              id={day.id}
              name={day.name}
              type="date"
              defaultValue={day.initialValue}
              className="numbers max-w-48"
              aria-describedby={describedBy(day.id)}
            />
          </Field>
        </>
      )}
    </AskedForm>
  );
}
