/** The language of this folder, as a page says it. */
export const LANGUAGE = 'en';

/** How it writes numbers, dates and plurals. It is named, never taken from the machine. */
export const LOCALE = 'en-GB';
