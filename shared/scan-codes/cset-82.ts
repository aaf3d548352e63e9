/** CSET 82, in the order that gives each character its value. Source: GS1 General Specifications figure 7.11-1. */
export const CSET_82 = '!"%&\'()*+,-./0123456789:;<=>?ABCDEFGHIJKLMNOPQRSTUVWXYZ_abcdefghijklmnopqrstuvwxyz';
