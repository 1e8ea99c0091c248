/** Takes the focus to the first field that is refused, in the order of the page; a group of choices to its first choice. */
export function focusFirstRefused(within: HTMLElement | null): void {
  const refused = within?.querySelector<HTMLElement>(
    '[aria-invalid="true"], [data-refused="true"] input, [data-refused="true"] button',
  );
  refused?.focus();
}
