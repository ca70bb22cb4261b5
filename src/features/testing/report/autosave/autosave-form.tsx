"use client";

import { useRouter } from "next/navigation";
import {
  useActionState,
  useEffect,
  useEffectEvent,
  useLayoutEffect,
  useRef,
  useState,
  useSyncExternalStore,
  type ReactNode,
} from "react";
import { saveReportFields, saveReportForm } from "../draft-actions";
import type { AskedField } from "../save-answer";
import { AskedContext, AskedElsewhere } from "./asked-at-field";
import { FieldAutosave, IDLE } from "./field-autosave";
import { showTexts, textsIn, wasTouchedEarly } from "./form-texts";
import { SaveLine } from "./save-line";
import type { NextPage } from "./step-bar";
import { readAlso } from "./also";
import { THEN } from "./then";
import { usePlacedFields } from "./use-placed-fields";

interface AutosaveFormProps {
  readonly testerId: string;
  /** What the server holds of these fields. */
  readonly stored: Readonly<Record<string, string>>;
  readonly next: NextPage | null;
  /** Native controls, each with its field's name. */
  readonly children: ReactNode;
}

/** A form that saves its fields as they are typed. Without JavaScript its button saves them. */
export function AutosaveForm({ testerId, stored, next, children }: AutosaveFormProps) {
  const form = useRef<HTMLFormElement>(null);
  const [autosave] = useState(() => new FieldAutosave(testerId, saveReportFields));
  const status = useSyncExternalStore(
    autosave.subscribe,
    () => autosave.status,
    () => IDLE,
  );
  const router = useRouter();
  const [placed, place] = usePlacedFields();
  const [answer, save] = useActionState(saveReportForm, null);
  const scan = () => {
    if (form.current) for (const [field, text] of textsIn(form.current)) autosave.type(field, text);
  };
  const show = () => {
    if (form.current) showTexts(form.current, (field) => autosave.textOf(field));
  };

  const onStart = useEffectEvent(() => {
    const stop = autosave.start(answer?.asked);
    if (form.current && wasTouchedEarly(form.current)) scan();
    show();
    return stop;
  });
  useEffect(() => onStart(), []);
  const onStored = useEffectEvent((texts: AutosaveFormProps["stored"]) => {
    autosave.learn(texts);
    if (autosave.hasStarted) show();
  });
  useLayoutEffect(() => onStored(stored), [stored]);

  const choose = (asked: AskedField, which: "there" | "here") => {
    autosave.choose(asked, which);
    show();
  };
  const goOn = async ({ href }: NextPage) => {
    await autosave.settled();
    // Not before the router has taken in the answer to the save: it would discard that, and go back to draw it anew.
    setTimeout(() => router.push(href));
  };
  const isIdle = status.state === "idle";
  const asked = isIdle ? (answer?.asked ?? []) : status.asked;
  // Without scripts no field tells that it shows its own question: all do but those that the page has no more.
  const isPlaced = ({ field, isRemoved }: AskedField) => (isIdle ? isRemoved !== true : placed.has(field));
  return (
    <form
      ref={form}
      action={save}
      autoComplete="off"
      noValidate
      onInput={scan}
      onBlur={() => autosave.flush()}
      onSubmit={(event) => {
        event.preventDefault();
        const submitter = event.nativeEvent instanceof SubmitEvent ? event.nativeEvent.submitter : null;
        scan();
        for (const [field, text] of readAlso(submitter)) autosave.type(field, text);
        show();
        autosave.flush();
        if (next !== null && submitter?.getAttribute("name") === THEN) void goOn(next);
      }}
    >
      {/* Enter in a field presses a form's first button. */}
      <button type="submit" tabIndex={-1} aria-hidden="true" className="sr-only">
        Save
      </button>
      <input type="hidden" name="testerId" value={testerId} />
      <input type="hidden" name="was" value={JSON.stringify(stored)} />
      <AskedContext value={{ asked, choose, place, isPlaced }}>
        {children}
        <AskedElsewhere />
      </AskedContext>
      <SaveLine status={status} asked={asked} answer={answer} next={next} />
    </form>
  );
}
