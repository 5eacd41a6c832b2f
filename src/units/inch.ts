/** The inch and what is made of it. SOURCE: NIST SP 811, 2008, B.6: exact by definition. */

export const metresPerInch = 0.0254
export const inchesPerFoot = 12
