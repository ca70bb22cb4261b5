"use client";

import { Section } from "@/ui/section";
import { useEditing } from "./editing";
import { ChoiceField, TextField } from "./fields";
import { YarnList } from "./yarn-list";

const CRAFTS = [
  { value: "crochet", label: "Crochet" },
  { value: "knitting", label: "Knitting" },
];

/** The pattern's name and craft, its yarns and its written instructions. */
export function TextPart() {
  const { pattern, change } = useEditing("pattern", "change");
  const setInstructions = (text: string) =>
    change(
      ({ instructions: _before, ...rest }) => (text === "" ? rest : { ...rest, instructions: text }),
      "instructions",
    );
  return (
    <>
      <Section title="Name and craft" intro="Testers see this name. The craft decides between hook and needles.">
        <div className="flex flex-wrap gap-x-4 gap-y-3">
          <div className="min-w-60 max-w-xl flex-1">
            <TextField
              at={["name"]}
              label="Name of the pattern"
              value={pattern.name}
              onText={(name) => change((now) => ({ ...now, name }), "name")}
            />
          </div>
          <div className="w-40">
            <ChoiceField
              at={["craft"]}
              label="Craft"
              value={pattern.craft}
              choices={CRAFTS}
              onChoice={(value) =>
                change((now) => ({ ...now, craft: value === "crochet" ? "crochet" : "knitting" }), null)
              }
            />
          </div>
        </div>
      </Section>
      <YarnList />
      <Section
        title="Written instructions"
        intro="Your own text for testers. A new grading does not change numbers in it, so check them after each revision."
      >
        <div className="max-w-3xl">
          <TextField
            at={["instructions"]}
            label="Instructions"
            lines={20}
            value={pattern.instructions ?? ""}
            onText={setInstructions}
          />
        </div>
      </Section>
    </>
  );
}
