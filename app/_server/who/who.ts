/** Who writes, and from which device. Until sign-in comes, a name the device was told. */
export type Who = { who: string; device: string };
