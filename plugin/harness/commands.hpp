#pragma once
// The bodies of the plug-in's commands; plugin.cpp gives them their names.

#include <nlohmann/json_fwd.hpp>

#include "plugin/harness/command.hpp"

namespace spotblue::plugin {

nlohmann::ordered_json look_command(const Arguments& arguments);
nlohmann::ordered_json features_command(const Arguments& arguments);
nlohmann::ordered_json seats_command(const Arguments& arguments);
nlohmann::ordered_json clashes_command(const Arguments& arguments);
nlohmann::ordered_json check_command(const Arguments& arguments);
nlohmann::ordered_json findings_command(const Arguments& arguments);
nlohmann::ordered_json class_command(const Arguments& arguments);
nlohmann::ordered_json classes_command(const Arguments& arguments);
nlohmann::ordered_json take_command(const Arguments& arguments);
nlohmann::ordered_json mark_command(const Arguments& arguments);
nlohmann::ordered_json show_command(const Arguments& arguments);
nlohmann::ordered_json keep_command(const Arguments& arguments);
nlohmann::ordered_json kept_command(const Arguments& arguments);
nlohmann::ordered_json save_command(const Arguments& arguments);

}  // namespace spotblue::plugin
