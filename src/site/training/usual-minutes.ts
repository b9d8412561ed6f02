/** How long a session is where nothing says so: a lesson of a school, common practice. */
export const usualMinutes = 45
