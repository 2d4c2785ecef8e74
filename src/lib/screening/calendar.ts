/** The dates that results and advice are counted by. */
export * from '../calendar/local-date.ts';
