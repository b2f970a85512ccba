/** Excel's own theme goes before the system's: a dark Excel on a light desktop has a dark pane. */
export function followTheme(): void {
  const { officeTheme } = Office.context as { readonly officeTheme?: Office.OfficeTheme };
  if (officeTheme?.bodyBackgroundColor) paint(officeTheme.bodyBackgroundColor);
}

/** A colour such as "#1F1F1F" is dark when its red, green and blue together are below the middle. */
function paint(background: string): void {
  const parts = /^#?([0-9a-f]{2})([0-9a-f]{2})([0-9a-f]{2})/i.exec(background)?.slice(1);
  if (!parts) return;
  const light = parts.reduce((sum, part) => sum + parseInt(part, 16), 0) > (3 * 255) / 2;
  document.documentElement.dataset.theme = light ? "light" : "dark";
}
