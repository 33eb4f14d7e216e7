// The command line of trade_commands.h: options of each command, and which one was asked for. Compiled into
// the program alone; the commands themselves know no command line.
#pragma once

#include <CLI/CLI.hpp>
#include <functional>

#include "sync/tool/commands.h"

namespace newel::tool {

// Options of a person made up from a side and a level, or read from a file.
void addPersonOptions(CLI::App& command, PersonOptions& person);

// Set by the parsing of the command that was asked for; empty when it was none of these.
using Chosen = std::function<int(Output)>;

// Both must outlive the parsing.
void addTradeCommands(CLI::App& app, Chosen& chosen);

}  // namespace newel::tool
