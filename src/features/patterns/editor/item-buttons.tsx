import { Button } from "@/ui/button";

interface ItemButtonsProps {
  /** What the buttons act on, for screen readers. */
  readonly name: string;
  readonly onUp?: () => void;
  readonly onDown?: () => void;
  readonly onRemove: () => void;
}

const SMALL =
  "inline-flex min-h-11 min-w-11 items-center justify-center rounded-md text-soft hover:bg-band hover:text-ink disabled:opacity-35";

/** Moves an item of a list up or down, or removes it; undo restores it. */
export function ItemButtons({ name, onUp, onDown, onRemove }: ItemButtonsProps) {
  return (
    <span className="inline-flex items-center">
      {onUp || onDown ? (
        <>
          <button type="button" className={SMALL} disabled={!onUp} onClick={onUp} aria-label={`Move ${name} up`}>
            ↑
          </button>
          <button type="button" className={SMALL} disabled={!onDown} onClick={onDown} aria-label={`Move ${name} down`}>
            ↓
          </button>
        </>
      ) : null}
      <button type="button" className={SMALL} onClick={onRemove} aria-label={`Remove ${name}`}>
        ✕
      </button>
    </span>
  );
}

/** Adds an item at the end of a list. */
export function AddButton({ label, onAdd }: { readonly label: string; readonly onAdd: () => void }) {
  return (
    <Button look="quiet" onClick={onAdd}>
      <span aria-hidden="true">+</span> {label}
    </Button>
  );
}
