/** Asked of a page by the worker that goes; the answer is whether it holds unsaved edits. */
export const MAY_I_LOAD = 'counterpoise: may this page be loaded anew?';
