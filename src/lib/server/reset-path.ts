/** Where a link for a new password leads, below the address of the house. */
export const resetPath = (token: string) => `/coach/reset?token=${token}`;
