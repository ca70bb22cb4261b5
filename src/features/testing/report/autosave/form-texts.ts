type Control = HTMLInputElement | HTMLSelectElement | HTMLTextAreaElement;

/** The controls of the report's fields; hidden inputs do not count. */
function controlsOf(form: HTMLFormElement): Control[] {
  return [...form.elements].filter(
    (element): element is Control =>
      (element instanceof HTMLInputElement ||
        element instanceof HTMLSelectElement ||
        element instanceof HTMLTextAreaElement) &&
      element.type !== "hidden" &&
      element.name !== "",
  );
}

/** The texts of a form's fields; "" if nothing is chosen. */
export function textsIn(form: HTMLFormElement): Map<string, string> {
  const data = new FormData(form);
  return new Map(
    controlsOf(form).map(({ name }) => {
      const value = data.getAll(name).at(-1);
      return [name, typeof value === "string" ? value : ""];
    }),
  );
}

/** True if somebody typed or chose something before the page's scripts had loaded. */
export function wasTouchedEarly(form: HTMLFormElement): boolean {
  return controlsOf(form).some((control) => {
    if (control instanceof HTMLSelectElement)
      return (
        [...control.options].some(({ selected, defaultSelected }) => selected && !defaultSelected) &&
        control.selectedIndex > 0
      );
    if (control instanceof HTMLInputElement && isTicked(control)) return control.checked !== control.defaultChecked;
    return control.value !== control.defaultValue;
  });
}

/**
 * Puts texts into a form's fields.
 *
 * @param textOf undefined leaves a prefilled field as it is, and empties any other.
 */
export function showTexts(form: HTMLFormElement, textOf: (field: string) => string | undefined): void {
  for (const control of controlsOf(form)) {
    const found = textOf(control.name);
    if (found === undefined && "prefilled" in control.dataset) continue;
    const text = found ?? "";
    if (control instanceof HTMLInputElement && isTicked(control)) control.checked = control.value === text;
    else if (control.value !== text) control.value = text;
  }
}

function isTicked({ type }: HTMLInputElement): boolean {
  return type === "radio" || type === "checkbox";
}
