/** Whether keys belong to a field: what is pressed there is typed, undone or chosen there. */
export const isTyping = (target: EventTarget | null): boolean =>
  target instanceof HTMLInputElement ||
  target instanceof HTMLTextAreaElement ||
  target instanceof HTMLSelectElement;
