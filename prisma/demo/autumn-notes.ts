/** Questions, places that cause trouble, and a correction of the second test; each place by words that stand there. Invented. */
export const AUTUMN_QUESTIONS = [
  {
    ...{ by: "Dagny", ago: 1, at: "put ", heading: "Front", answer: null },
    asks: "In size S, are the stitches at the centre counted before or after I knit the first shoulder side?",
  },
  {
    ...{ by: "Celestine", ago: 14, at: "Part the work", heading: "Body" },
    asks: "Does the back include the stitch beside the marker?",
    answer: "Yes. The marker stands after it, so that front and back have the same number.",
  },
] as const;

export const AUTUMN_TROUBLES = [
  {
    ...{ by: "Jadwiga", ago: 8, at: "Take off one stitch at both edges", heading: "Sleeves" },
    happened: "I lost count where the decreases are spread evenly, and had two stitches too many at the cuff.",
    did: "I worked the last two decreases in the row before the rib.",
  },
  {
    ...{ by: "Dagny", ago: 1, at: "put ", heading: "Front" },
    happened: "My two shoulder sides were never the same.",
    did: "",
  },
] as const;

export const AUTUMN_CORRECTION = {
  ...{ ago: 7, at: "Pick up around the neck", sizes: ["XL", "2X", "3X", "4X", "5X"] },
  text: "Neck band, sizes XL to 5X: pick up all the waiting stitches of the back too. The text left open whether they count.",
  answers: [
    { by: "Jadwiga", answer: "changed" },
    { by: "Hanneke", answer: "following" },
  ],
} as const;
