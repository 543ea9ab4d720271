/** Refusals that the server itself raises; those of documents keep their own codes. */
export const SERVER_REFUSALS = {
  anotherDocument: {
    code: 'SRV-001',
    title: 'Another document',
    meaning: 'The id inside the document is not the one it is saved under.',
  },
} as const;
