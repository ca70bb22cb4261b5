/** What a message to several testers begins with. */
export const MESSAGE_STARTS = ["ask", "thanks", "finished", "empty"] as const;

export type MessageStart = (typeof MESSAGE_STARTS)[number];

export const START_NAMES: Readonly<Record<MessageStart, string>> = {
  ask: "How is it going?",
  thanks: "Thank you",
  finished: "The finished pattern",
  empty: "Nothing",
};

export interface StartWords {
  readonly subject: string;
  readonly text: string;
}

/** @param promised what the tester call promises; "" for nothing. */
export function startWords(start: MessageStart, { title, promised }: { title: string; promised: string }): StartWords {
  switch (start) {
    case "ask":
      return {
        subject: `How is “${title}” going?`,
        text: [
          `How is “${title}” going? I would like to hear from you, even if it is only a line.`,
          "Your link opens your test: there you can say how it goes with one tap, send your swatch, or tell me that you need more time. If you have to stop, that is all right too; tell me, so that somebody else can make your size.",
        ].join("\n\n"),
      };
    case "thanks":
      return {
        subject: `Thank you for testing “${title}”`,
        text: [
          `Thank you for testing “${title}”. Every size that I publish rests on what you and the others measured.`,
          ...(promised === "" ? [] : [`As promised:\n${promised}`]),
          "Your page shows what your report helped to change. You can say there how you would like to be named in the pattern.",
        ].join("\n\n"),
      };
    case "finished":
      return {
        subject: `“${title}”: the finished pattern`,
        text: [
          `The pattern that you tested, “${title}”, is finished.`,
          "You find it here: [your link to it]",
          "Thank you for your help with it.",
        ].join("\n\n"),
      };
    case "empty":
      return { subject: "", text: "" };
  }
}
