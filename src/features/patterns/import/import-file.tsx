"use client";

import Link from "next/link";
import { useRouter } from "next/navigation";
import { useMemo, useState, useTransition } from "react";
import type { Fault } from "@/engine/pattern";
import type { Failure } from "@/server/action";
import { Button, ButtonLink } from "@/ui/button";
import { Field, TextArea, TextInput, describedBy } from "@/ui/field";
import { Notice } from "@/ui/notice";
import { useTypedEarly } from "@/ui/use-typed-early";
import { LARGEST_DOCUMENT_BYTES, type BroughtIn } from "../schema";
import { FaultList } from "../components/fault-list";
import { glanceAtDocument, type DocumentGlance } from "./glance-at-document";

interface ImportFileProps {
  /** Idempotency key: sending the form twice stores it once. */
  readonly formKey: string;
  readonly bring: (input: { text: string; title: string; formKey: string }) => Promise<BroughtIn | Failure>;
}

type Outcome = BroughtIn | Failure | { readonly status: "too-large" } | { readonly status: "empty" };

/** A file or pasted text, what it is, and the result of the import. */
export function ImportFile({ formKey, bring }: ImportFileProps) {
  const router = useRouter();
  const [file, setFile] = useState<{ name: string; text: string } | null>(null);
  const [pasted, setPasted] = useState("");
  const pastedArea = useTypedEarly<HTMLTextAreaElement>(pasted, setPasted);
  const [title, setTitle] = useState("");
  const [outcome, setOutcome] = useState<Outcome | null>(null);
  const [isSending, startSending] = useTransition();
  const text = file?.text ?? pasted;
  const glance = useMemo(() => glanceAtDocument(text), [text]);

  const choose = async (chosen: File | undefined) => {
    setOutcome(null);
    if (chosen === undefined) return setFile(null);
    if (chosen.size > LARGEST_DOCUMENT_BYTES) return setOutcome({ status: "too-large" });
    setFile({ name: chosen.name, text: await chosen.text() });
  };

  const send = () => {
    if (text.trim() === "") return setOutcome({ status: "empty" });
    if (new Blob([text]).size > LARGEST_DOCUMENT_BYTES) return setOutcome({ status: "too-large" });
    startSending(async () => {
      const brought = await bring({ text, title, formKey }).catch(() => NOT_SENT);
      setOutcome(brought);
      if (brought.status === "stored" && brought.warnings.length === 0) router.push(brought.href);
    });
  };

  if (outcome?.status === "stored" && outcome.warnings.length > 0) {
    return <StoredWithWarnings href={outcome.href} warnings={outcome.warnings} />;
  }
  return (
    <form
      noValidate
      onSubmit={(event) => {
        event.preventDefault();
        send();
      }}
    >
      <OutcomeNotice outcome={outcome} />
      <Field id="file" label="File" hint="JSON, at most 20 MB.">
        <input
          id="file"
          type="file"
          accept=".json,application/json"
          aria-describedby={describedBy("file")}
          onChange={({ target }) => void choose(target.files?.[0])}
          className="w-full rounded-md border border-line-strong bg-white p-2 file:mr-4 file:min-h-9 file:rounded file:border-0 file:bg-band file:px-4 file:font-semibold"
        />
      </Field>
      {file === null ? (
        <Field id="pasted" label="Or paste its text">
          <TextArea
            ref={pastedArea}
            id="pasted"
            rows={8}
            spellCheck={false}
            value={pasted}
            aria-describedby={describedBy("pasted")}
            onChange={({ target }) => setPasted(target.value)}
            className="font-mono text-sm"
          />
        </Field>
      ) : null}
      <Glance glance={glance} />
      {glance?.kind === "call" ? (
        <Field
          id="title"
          label="Name of the test"
          hint={`If you leave it empty, the test has the name of the pattern, “${glance.name}”.`}
          errors={outcome?.status === "title" ? [outcome.says] : undefined}
        >
          <TextInput
            id="title"
            value={title}
            aria-describedby={describedBy("title")}
            aria-invalid={outcome?.status === "title"}
            onChange={({ target }) => setTitle(target.value)}
          />
        </Field>
      ) : null}
      <Button type="submit" disabled={isSending}>
        {isSending ? "Importing …" : "Import file"}
      </Button>
    </form>
  );
}

const NOT_SENT: Failure = {
  status: "failed",
  says: "The file did not reach Sizewright. It is still on this page. Check your connection and try again.",
};

function Glance({ glance }: { readonly glance: DocumentGlance | null }) {
  if (glance === null) return null;
  return (
    <p className="mb-5 rounded-md bg-band px-4 py-3 wrap-anywhere" role="status">
      {glance.kind === "call" ? "A test" : "A pattern"}: “{glance.name}”, {glance.sizes} sizes
      {glance.kind === "call" ? `, ${glance.testers} testers` : ""}.
    </p>
  );
}

function OutcomeNotice({ outcome }: { readonly outcome: Outcome | null }) {
  switch (outcome?.status) {
    case "too-large":
      return (
        <Notice tone="problem" title="This file is larger than 20 MB">
          <p>The limit is 20 MB. Nothing was sent.</p>
        </Notice>
      );
    case "empty":
      return <Notice tone="problem" title="Choose a file, or paste its text" />;
    case "failed":
      return <Notice tone="problem" title={outcome.says} />;
    case "faults":
      return (
        <Notice tone="problem" title="The file was not imported, and nothing was stored">
          <FaultList faults={outcome.faults} />
        </Notice>
      );
    default:
      return null;
  }
}

function StoredWithWarnings({ href, warnings }: { readonly href: string; readonly warnings: readonly Fault[] }) {
  return (
    <>
      <Notice tone="done" title="The file is imported, but some numbers break the pattern’s own rules">
        <p>They are saved as they are. You can fix them under “Edit”.</p>
        <FaultList faults={warnings} />
      </Notice>
      <div className="flex flex-wrap items-center gap-4">
        <ButtonLink href={href}>Continue</ButtonLink>
        <Link href="/patterns" className="text-link">
          All patterns
        </Link>
      </div>
    </>
  );
}
