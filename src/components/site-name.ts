export const siteName = "Charge-Air Reference";
/** Where there is little room: under an icon. */
export const shortSiteName = "Charge-Air";
