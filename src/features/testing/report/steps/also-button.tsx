import { Button, type ButtonLook } from "@/ui/button";
import { ALSO, alsoValue } from "../autosave/also";

interface AlsoButtonProps {
  /** Field → its new text; null removes the field. */
  readonly changes: Readonly<Record<string, string | null>>;
  readonly look?: ButtonLook;
  readonly children: string;
}

/** A button of a self-saving form that changes other fields. */
export function AlsoButton({ changes, look = "quiet", children }: AlsoButtonProps) {
  return (
    <Button
      type="submit"
      look={look}
      name={ALSO}
      value={alsoValue(changes)}
      className={look === "plain" ? "-mx-2 justify-self-start" : ""}
    >
      <span className="min-w-0 wrap-anywhere">{children}</span>
    </Button>
  );
}
