// A pair's choices as the command line has them. Private to ui/worker/.
#pragma once

#include "cli/arguments.h"
#include "ui/worker/read_pair.h"

namespace standin::ui {

[[nodiscard]] inline cli::CompareCommand commandOf(PairRequest const& request) {
    cli::CompareCommand command;
    command.reference = request.reference;
    command.candidate = request.candidate;
    command.referenceVariant = request.referenceVariant;
    command.candidateVariant = request.candidateVariant;
    command.vocabularies = request.vocabularies;
    command.corrections = request.corrections;
    command.cell = request.cell;
    command.circuit = request.circuit;
    return command;
}

}  // namespace standin::ui
