/** Name of the button that saves a form without JavaScript and opens another page; its value is that page. */
export const THEN = "then";
