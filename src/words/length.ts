import type { Sentences } from "./sentences";
import type { LengthProblems } from "../problem";

export const lengthSentences: Sentences<LengthProblems> = {
  blank: ({ wanted }) => `This is blank: ${wanted.includes(", such as ") ? `${wanted},` : wanted} is needed here.`,
  unreadableLength: ({ text }) => `"${text}" can't be read as a length. Write it like 30 1/2, 77.5 cm or 2 3/8 yd.`,
  unknownUnit: ({ text, known }) => `"${text}" is not a unit known here. Write ${known}.`,
  negative: ({ text, what }) => `${what} can't be below zero, and this is ${text}.`,
  badStep: ({ text }) => `"${text}" can't be a step. Write what the shop cuts by, such as 1/8 or 0.1.`,
  badDenominator: ({ text }) =>
    `"${text}" can't be a denominator. Write a whole number from 1 to 1000, such as 8 or 16.`,
  excelDate: ({ text }) => `Excel has made a date of this (${text}): type 0 7/8, or 6 to 12.`,
  notANumber: ({ text, wanted }) => `"${text}" is not ${wanted}.`,
};
