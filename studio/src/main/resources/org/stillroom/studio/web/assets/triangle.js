// The mixing triangle under a hand.
//
// What a page gives it (see compose/triangle.jte):
//   figure#triangle      data-numbers: the recipe in bare numbers (JSON), data-shown: the part that is drawn
//   [data-target]        inputs: data-target="strength" (% vol), "sugar" (g/L); written when the point is let go, then told by
//                        the events "input" and "change", so that the form asks the server as if a person had typed
//   [data-step]          buttons: data-step="strength" or "sugar", data-by="-0.5": the same without a drag
//   [data-line]          cells with a number alone: data-line=INDEX of the recipe's line, or "total"; data-unit="g" or "ml"
//   [data-said]          words anywhere: data-said="strength", "sugar", "ethanol", "sweet", "water"
