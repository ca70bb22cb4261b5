import { TEMPLATES } from "@/engine/templates";

interface TemplateChoiceProps {
  readonly chosen: string | undefined;
  readonly onChoose: (template: string) => void;
}

/** One of the garments, with what it is. */
export function TemplateChoice({ chosen, onChoose }: TemplateChoiceProps) {
  return (
    <fieldset>
      <legend className="sr-only">Garment</legend>
      <div className="mb-3 grid gap-3 sm:grid-cols-2">
        {TEMPLATES.map(({ id, label, says }) => (
          <label
            key={id}
            className="flex min-h-11 cursor-pointer items-start gap-3 rounded-sheet border border-line bg-sheet px-4 py-3 shadow-sheet has-[:checked]:border-ink"
          >
            <input
              type="radio"
              name="template"
              value={id}
              defaultChecked={id === chosen}
              onChange={() => onChoose(id)}
              className="mt-1 size-5 shrink-0 accent-thread"
            />
            <span className="min-w-0">
              <span className="block font-semibold">{label}</span>
              <span className="block text-sm text-soft">{says}</span>
            </span>
          </label>
        ))}
      </div>
    </fieldset>
  );
}
